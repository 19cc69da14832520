import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "build.deadlock",
  key: "built",
  slip: "the bars round a sheet said to come put together, the sheet left out of it",
  spots: { "saw-guard": "back-upper" },
  sizes: "plain",
  plant(file, spot) {
    const panel = file.panels?.find(({ id }) => id === spot);
    const bars = (panel?.edges ?? []).flatMap((edge) => (edge === "free" ? [] : [edge.bar]));
    file.groups = [{ id: "ring", parts: bars as [string, ...string[]], built: true }];
    return ["ring"];
  },
};
