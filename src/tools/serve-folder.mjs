/**
 * Serves a built site from a folder: for `npm start`, and for the tests that need a real address.
 */
import { once } from "node:events";
import { createServer } from "node:http";
import sirv from "sirv";

/**
 * @typedef {{ port: number, origin: string, close: () => Promise<void> }} Served
 */

/** Headers that a static page cannot give itself. */
const headers = {
  "Content-Security-Policy": "frame-ancestors 'self'",
  "X-Content-Type-Options": "nosniff",
};

/**
 * Serves `folder` on this machine alone, from `port` or, when that is taken, the next free one after it.
 * @param {string} folder path of the built site
 * @param {number} port the first to try; 0 takes any free one
 * @returns {Promise<Served>} the port taken, the address without a closing slash, and a way to stop
 * @throws {Error} when no port can be had
 */
export async function serveFolder(folder, port) {
  const files = sirv(folder, { dev: true, setHeaders });
  const server = createServer((request, response) => {
    files(request, response, () => {
      response.writeHead(404, { "Content-Type": "text/plain; charset=utf-8" });
      response.end("There is no such page.\n");
    });
  });
  const taken = await listen(server, port, port === 0 ? 0 : Math.min(port + 100, 65_535));
  return {
    port: taken,
    origin: `http://localhost:${String(taken)}`,
    close: async () => {
      server.close();
      server.closeAllConnections();
      await once(server, "close");
    },
  };
}

/**
 * @param {import("node:http").ServerResponse} response
 */
function setHeaders(response) {
  for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
}

/**
 * Listens on the first free port from `port` to `last`.
 * @param {import("node:http").Server} server
 * @param {number} port
 * @param {number} last
 * @returns {Promise<number>}
 */
async function listen(server, port, last) {
  try {
    // The name, not a number: the browser that opens http://localhost then finds the same one of IPv4 and IPv6.
    server.listen(port, "localhost");
    await once(server, "listening");
  } catch (error) {
    const inUse = error instanceof Error && "code" in error && error.code === "EADDRINUSE";
    if (!inUse || port >= last) throw error;
    return listen(server, port + 1, last);
  }
  const address = server.address();
  return typeof address === "object" && address !== null ? address.port : port;
}
