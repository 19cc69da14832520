// Generated from schema/ by `npm run generate`; do not edit.
import type { ErrorObject } from "ajv";
interface Validator {
  (value: unknown): boolean;
  errors?: readonly ErrorObject[] | null;
}
export const whole: Validator;
export const area: Validator;
export const path: Validator;
