import { defineCriterion, defineRule, facts, frameRef, si } from "trysquare";

const doorWidth = defineCriterion({
  name: "door-width",
  quantity: "length",
  standard: "900 mm",
  about: "clear width of the door that frames leave the workshop through",
  basis: "our workshop",
});

/** How far the bars reach along x, y and z of the drawing, m. */
function extents(tubes) {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (const { bar, axes, half } of tubes) {
    for (const k of [0, 1, 2]) {
      const beside = Math.abs(axes.y[k]) * half.y + Math.abs(axes.z[k]) * half.z;
      low[k] = Math.min(low[k], bar.from[k] - beside, bar.to[k] - beside);
      high[k] = Math.max(high[k], bar.from[k] + beside, bar.to[k] + beside);
    }
  }
  return high.map((top, k) => top - low[k]);
}

export const rule = defineRule({
  id: "shed:frame.stuck",
  title: "Frames leave the workshop by its door",
  group: "frame",
  level: "hold",
  basis: ["our workshop"],
  needs: { tubes: facts.tubes },
  criteria: { doorWidth },
  messages: {
    wide: {
      text: "is {width:length} across where it is narrowest",
      advice: "divide it into sub-assemblies, or build it outside",
      measures: "length",
    },
  },
  *inspect({ tubes }, { doorWidth }, say) {
    const width = si(Math.min(...extents(tubes.values())), "length");
    yield say.wide(frameRef, { width }, { measured: width, limit: doorWidth });
  },
});
