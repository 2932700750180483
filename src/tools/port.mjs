/**
 * The port that `npm start` begins at: `--port N`, `--port=N`, or the variable PORT, else 4321.
 */
import { parseArgs } from "node:util";

/**
 * @param {string[]} args the command line's arguments
 * @param {string | undefined} variable the value of PORT
 * @returns {number}
 * @throws {Error} naming what was found and what is accepted
 */
export function wantedPort(args, variable) {
  const { values } = parseArgs({ args, options: { port: { type: "string" } } });
  const text = values.port ?? (variable === undefined || variable === "" ? "4321" : variable);
  const port = Number(text);
  if (!/^\d+$/.test(text) || port < 1 || port > 65_535) {
    throw new Error(`The port is "${text}"; a whole number from 1 to 65535 is accepted.`);
  }
  return port;
}
