/** In each frame one end that nothing but its cap covers. */
export const CAPPED_ENDS: Readonly<Record<string, string>> = {
  "braced-trestle": "front/to",
  "camera-rig": "bridge/to",
  "hoist-gantry": "cap-left/from",
  "inch-bench": "front/to",
  "incubator-stand": "back/from",
  "pot-rack": "top-front/to",
  "roller-stand": "left/to",
  "saw-guard": "top-front/to",
  "seed-cabinet": "top-back/from",
  "seed-trolley": "handle/to",
  "step-platform": "front/to",
  "timber-table": "back/to",
  workstation: "arm-1/from",
};
