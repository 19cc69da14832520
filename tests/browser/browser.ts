import { existsSync } from "node:fs";
import { type Browser, chromium } from "playwright-core";

const PLACES = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

/** A browser on this machine; TRYSQUARE_BROWSER names another. Undefined where there is none. */
export const browserPath: string | undefined = [process.env.TRYSQUARE_BROWSER ?? "", ...PLACES].find(
  (path) => path !== "" && existsSync(path),
);

/** Said where the tests are skipped. */
export const without =
  browserPath === undefined ? " (skipped: no Chromium on this machine; TRYSQUARE_BROWSER may name one)" : "";

/** WebGL in software, so that machines without a graphics card draw too. */
const SOFTWARE = ["--use-angle=swiftshader", "--enable-unsafe-swiftshader"];

export function startBrowser(more: readonly string[] = SOFTWARE): Promise<Browser> {
  if (browserPath === undefined) throw new Error("no browser");
  return chromium.launch({ executablePath: browserPath, args: ["--no-sandbox", ...more] });
}
