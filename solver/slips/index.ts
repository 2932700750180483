// Learners' slips, each a table of rules with one row replaced. Not shown on any page yet.
export { swapSineCosine } from "./swap-sine-cosine.ts";
