// Ropes, knots and pulleys at random, judged by an independent formulation and by mathjs lusolve.
import { ropeKinds } from "../arbitraries/set-up-problems.ts";
import { judgeKinds } from "./judge-set-ups.ts";

judgeKinds("ropes and pulleys", ropeKinds);
