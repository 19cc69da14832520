// Generated from schema/ by `npm run generate`; do not edit.
import type { ErrorObject } from "ajv";
interface Validator {
  (value: unknown): boolean;
  errors?: readonly ErrorObject[] | null;
}
export const whole: Validator;
export const bar: Validator;
export const copy: Validator;
export const door: Validator;
export const fastening: Validator;
export const group: Validator;
export const joint: Validator;
export const load: Validator;
export const loadCase: Validator;
export const mass: Validator;
export const panel: Validator;
export const pivot: Validator;
export const stand: Validator;
export const tie: Validator;
export const zone: Validator;
