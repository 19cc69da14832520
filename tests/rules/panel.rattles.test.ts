import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import { rule } from "../../src/rules/panel.rattles.ts";
import { pane, paneled } from "./panel-frames.ts";

const bare = (sheet: string) =>
  pane((panel) => {
    panel.sheet = sheet;
    delete panel.gasket;
  });

it("finds panels loose in bare slots, 8.2 mm open", () => {
  const wrong = proveRule(rule, paneled(), [
    { title: "a sheet that fills the slot", edit: bare("polycarbonate-8"), finds: [] },
    { title: "2.2 mm of play", edit: bare("polycarbonate-6"), finds: [{ at: "pane", key: "loose", measured: 0.0022 }] },
    {
      title: "less play allowed on this panel",
      edit: (file) => {
        bare("polycarbonate-8")(file);
        pane((panel) => {
          panel.criteria = { "panel-play": "0.1 mm" };
        })(file);
      },
      finds: [{ at: "pane", key: "loose", measured: 0.0002 }],
    },
  ]);
  expect(wrong).toEqual([]);
});
