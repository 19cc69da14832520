/** Arguments or a house file that cannot be used: told without a trace, exit code 2. */
export class Unusable extends Error {
  override readonly name = "Unusable";
}
