/**
 * Writes down everything a page of ours must not do: say something on the console, fail, or ask another origin.
 */
import type { Page } from "playwright-core";

/**
 * Adds a line to `complaints` for each console message, uncaught error, failed answer and request to an origin other
 * than `origin`, as they happen.
 */
export function watch(page: Page, origin: string, complaints: string[]): void {
  page.on("console", (message) => complaints.push(`console ${message.type()}: ${message.text()}`));
  page.on("pageerror", (error) => complaints.push(`uncaught: ${error.message}`));
  page.on("request", (request) => {
    const url = request.url();
    if (!/^(?:data|blob):/.test(url) && new URL(url).origin !== origin) complaints.push(`foreign request: ${url}`);
  });
  page.on("response", (response) => {
    if (response.status() >= 400) complaints.push(`answer ${String(response.status())}: ${response.url()}`);
  });
}
