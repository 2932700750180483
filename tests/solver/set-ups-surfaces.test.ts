// Crates, slopes, lifts and carts at random, judged by an independent formulation and by mathjs lusolve.
import { crateKinds, frameKinds } from "../arbitraries/set-up-problems.ts";
import { judgeKinds } from "./judge-set-ups.ts";

judgeKinds("crates and slopes", crateKinds);
judgeKinds("lifts, carts and wedges", frameKinds);
