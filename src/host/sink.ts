/** Where a report goes: written whole by `finish`, or not at all after `abandon`. All may reject with Undelivered. */
export interface Sink {
  /** As messages name it. */
  readonly name: string;
  write(chunk: string): Promise<void>;
  finish(): Promise<void>;
  /** Leaves no trace; never rejects. */
  abandon(): Promise<void>;
}

/** A report could not be written: where, and why in words. */
export class Undelivered extends Error {
  override readonly name = "Undelivered";
  constructor(sink: string, why: string) {
    super(`the report could not be written to ${sink}: ${why}`);
  }
}
