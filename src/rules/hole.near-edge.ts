import { defineCriterion } from "../criteria/criterion.ts";
import { boredHoles } from "../facts/bored-holes.ts";
import { holeWords } from "../facts/hole-words.ts";
import { plateEdges } from "../facts/plate-edges.ts";
import { screwedParts } from "../facts/screwed-parts.ts";
import { endRef, ref } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { defineRule } from "./shape/rule.ts";

const nutToEnd = defineCriterion({
  name: "nut-to-end",
  of: "bars",
  quantity: "ratio",
  standard: "1.5",
  within: ["0.5", "10"],
  about: "distance of a nut's screw from the cut end, in slot openings: nearer, the lips spread on one side only",
  basis: "common practice",
});

const holeToEdge = defineCriterion({
  name: "hole-to-edge",
  of: "bars",
  quantity: "ratio",
  standard: "1.2",
  within: ["0.5", "10"],
  about: "distance of a hole's middle from an edge or cut end, in hole diameters",
  basis: "EN 1999-1-1:2007, Table 8.2: least edge distance 1.2 d0 (from memory)",
});

export const rule = defineRule({
  id: "hole.near-edge",
  title: "Screws and holes keep their distance from edges and cut ends",
  group: "joints",
  level: "hold",
  basis: ["EN 1999-1-1:2007, 8.5.1", "common practice"],
  needs: { screwedParts, boredHoles, plateEdges },
  criteria: { nut: nutToEnd, hole: holeToEdge },
  messages: {
    nut: {
      text: "a nut sits {distance:length} from the cut end {end:end}",
      advice: "move the connector further along the bar, away from the cut end",
      measures: "length",
      sense: "at least",
    },
    hole: {
      text: "{what:word} lies {distance:length} from the cut end of {bar:bar}",
      overlap: "{what:word} lies {distance:length} beyond the cut end of {bar:bar}",
      advice: "move the hole away from the cut end",
      measures: "length",
      sense: "at least",
    },
    plate: {
      text: "hole {hole:word} of its plate lies {distance:length} from the edge",
      advice: "take a larger plate",
      measures: "length",
      sense: "at least",
    },
  },
  *inspect({ screwedParts: parts, boredHoles: bored, plateEdges: plates }, { nut, hole }, say) {
    for (const connector of parts.all) {
      // Screws of a sheet stand where there is room for them.
      for (const screw of connector.sheet ? [] : connector.screws) {
        if (screw.into.kind !== "nut") continue;
        const { landing } = screw.into;
        if (!landing.slot || landing.toEnd.distance <= 0) continue;
        const given = nut.at(ref("bar", landing.bar));
        const distance = si(landing.toEnd.distance, "length");
        yield say.nut(
          screw.ref,
          { distance, end: endRef(landing.bar, landing.toEnd.end) },
          { measured: distance, limit: { ...given, value: si(given.value * landing.slot.opening, "length") } },
        );
      }
    }
    for (const { bar, hole: at, toEnd } of bored.edges) {
      const given = hole.at(ref("bar", bar));
      const distance = si(toEnd, "length");
      yield say.hole(
        at.by,
        { what: holeWords(at.what), distance, bar: ref("bar", bar) },
        { measured: distance, limit: { ...given, value: si(given.value * 2 * at.radius, "length") } },
      );
    }
    for (const plate of plates) {
      const distance = si(plate.distance, "length");
      yield say.plate(
        plate.screw,
        { hole: plate.hole, distance },
        { measured: distance, limit: { ...hole, value: si(hole.value * plate.diameter, "length") } },
      );
    }
  },
});
