import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "door.collides",
  key: "doors",
  slip: "a gate hung beside the door that leans into its way when it is wide open",
  spots: { "saw-guard": "door" },
  /*
   * The far corner of the door turns 703.25 mm across and 45 mm deep about its hinge at x = 47.25, 704.7 mm away; the tip of the gate, 324.75 mm across,
   * about its own at x = 802.25. It is so near where 755 + 324.75 cos θ and 324.75 sin θ are: (704.7² - 755² - 324.75²)/(2·755·324.75) = cos 111.3°.
   */
  sizes: { just: 112, far: 130 }, // degrees that the gate opens
  plant(file, spot, size) {
    file.bars.push({ id: "gate-post", profile: "45x45-10", from: [827, 22.5, 300], to: [827, 22.5, 700] });
    file.bars.push({ id: "gate", profile: "45x45-10", from: [827, 22.5, 500], to: [1127, 22.5, 500] });
    file.joints?.push({ bars: ["gate/from"], by: "under" });
    file.doors?.push({
      id: "side-gate",
      bars: ["gate-post", "gate"],
      axis: "-z",
      swing: [0, size],
      hinges: [350, 650].map((z) => ({ part: "hinge-45", bars: ["gate-post", "post-2"], at: [802.25, 0, z] })) as never,
    });
    return [spot];
  },
};
