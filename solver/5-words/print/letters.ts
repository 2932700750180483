// How a letter looks: in TeX, in plain text, and in what an evaluator reads.

/** The looks of one letter. */
export interface Letter {
  readonly tex: string;
  readonly text: string;
}

const GREEK: Readonly<Record<string, Letter>> = {
  alpha: { tex: "\\alpha", text: "α" },
  beta: { tex: "\\beta", text: "β" },
  gamma: { tex: "\\gamma", text: "γ" },
  delta: { tex: "\\delta", text: "δ" },
  theta: { tex: "\\theta", text: "θ" },
  epsilon: { tex: "\\varepsilon", text: "ε" },
  zeta: { tex: "\\zeta", text: "ζ" },
  eta: { tex: "\\eta", text: "η" },
  straight: { tex: "180\\degree", text: "180°" },
};

const ACCELERATIONS: Readonly<Record<string, Letter>> = {
  ax: { tex: "a_x", text: "ax" },
  ay: { tex: "a_y", text: "ay" },
};

/** The looks of a symbol: T1 is T with subscript 1, T1x has 1x below, left is T with the word below. `components` names the component symbols; `own` are letters of this derivation. */
export function letterOf(id: string, components: ReadonlySet<string>, own?: ReadonlyMap<string, Letter>): Letter {
  const known = own?.get(id) ?? GREEK[id] ?? ACCELERATIONS[id];
  if (known !== undefined) return known;
  const isComponent = components.has(id);
  const whole = isComponent ? id.slice(0, -1) : id;
  const axis = isComponent ? id.slice(-1) : "";
  const match = /^([A-Za-z])(\d*)$/.exec(whole);
  if (match === null) return { tex: `T_{\\mathrm{${whole}}${axis}}`, text: id };
  const below = `${match[2] ?? ""}${axis}`;
  return { tex: below === "" ? whole : `${match[1] ?? ""}_{${below}}`, text: id };
}
