import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { textOf } from "../demo/inspect-demo.ts";
import { comparisonPage } from "../report/comparison-page.ts";
import { revisedBench } from "../report/revised-bench.ts";
import { browserPath, startBrowser, without } from "./browser.ts";

const SLOW = 240_000;
const require = createRequire(import.meta.url);
const axeSource = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
const VIOLATIONS = `axe.run().then(({ violations }) => violations.map(({ id, nodes }) => id + ": " + nodes[0]?.html))`;
const OVERFLOW = "document.documentElement.scrollWidth - document.documentElement.clientWidth";

describe.skipIf(browserPath === undefined)(`a comparison in a browser${without}`, () => {
  let folder = "";
  let browser: Browser;
  let address = "";
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), "trysquare-compare-"));
    address = write("page.html", comparisonPage(textOf("potting-bench"), revisedBench()));
    // It has no script and draws nothing in 3D: it is shown as well where a browser can do neither.
    browser = await startBrowser(["--disable-3d-apis"]);
  }, SLOW);
  afterAll(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  function write(name: string, text: string): string {
    const path = join(folder, name);
    writeFileSync(path, text);
    return pathToFileURL(path).href;
  }

  async function open(url: string, options: BrowserContextOptions = {}) {
    const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, ...options });
    const page: Page = await context.newPage();
    const [complaints, requests]: [string[], string[]] = [[], []];
    page.on("console", (message) => complaints.push(message.text()));
    page.on("pageerror", (error) => complaints.push(error.message));
    page.on("dialog", (dialog) => {
      complaints.push(`dialog: ${dialog.message()}`);
      void dialog.dismiss();
    });
    page.on("request", (request) => requests.push(request.url()));
    await page.goto(url);
    return { page, complaints, requests };
  }

  it(
    "opens from the disk without a complaint, asks for nothing but itself, and shows both frames without scripts and 3D",
    async () => {
      const { page, complaints, requests } = await open(address, { javaScriptEnabled: false });
      expect(complaints).toEqual([]);
      expect(requests).toEqual([address]);
      expect(await page.locator("figure.view svg:visible").count()).toBe(5);
      expect(await page.locator('figure[data-view=isometric] [data-ghost="bar shelf-2"]').isVisible()).toBe(true);
      await page.context().close();
    },
    SLOW,
  );

  it.each([
    ["wide", 1280],
    ["on a phone", 390],
  ])(
    "has nothing an accessibility checker objects to, %s",
    async (_, width) => {
      const { page } = await open(address, { viewport: { width, height: 800 } });
      await page.evaluate(axeSource);
      expect(await page.evaluate<readonly string[]>(VIOLATIONS)).toEqual([]);
      expect(await page.evaluate<number>(OVERFLOW)).toBe(0);
      await page.context().close();
    },
    SLOW,
  );

  it(
    "prints to A4 and Letter on a few pages with its drawings",
    async () => {
      const { page } = await open(address);
      for (const format of ["A4", "Letter"] as const) {
        const pdf = (await page.pdf({ format })).toString("latin1");
        const pages = [...pdf.matchAll(/\/Type\s*\/Page\b/g)].length;
        expect(pages).toBeGreaterThanOrEqual(2);
        expect(pages).toBeLessThanOrEqual(5);
      }
      await page.context().close();
    },
    SLOW,
  );

  it(
    "shows hostile names as text and runs none of them",
    async () => {
      const hostile = `</title><script>alert(1)</script><img src=x onerror=alert(2)>"'&\u202e`;
      const id = `<b>"'&amp`;
      const frame = JSON.parse(revisedBench().replaceAll(/"upright-3"/g, () => JSON.stringify(id))) as {
        title: string;
      };
      frame.title = hostile;
      const text = comparisonPage(textOf("potting-bench"), JSON.stringify(frame));
      const { page, complaints, requests } = await open(write("hostile.html", text));
      expect(await page.locator("h1").textContent()).toBe(hostile.replace("\u202e", "\\u202e"));
      expect(await page.locator("#bars").textContent()).toContain(id);
      expect(await page.locator("img, script, h1 b").count()).toBe(0);
      expect(complaints).toEqual([]);
      expect(requests).toHaveLength(1);
      await page.context().close();
    },
    SLOW,
  );
});
