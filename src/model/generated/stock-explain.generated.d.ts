// Generated from schema/ by `npm run generate`; do not edit.
import type { ErrorObject } from "ajv";
interface Validator {
  (value: unknown): boolean;
  errors?: readonly ErrorObject[] | null;
}
export const whole: Validator;
export const cap: Validator;
export const connector: Validator;
export const gasket: Validator;
export const material: Validator;
export const nut: Validator;
export const profile: Validator;
export const screwFamily: Validator;
export const series: Validator;
export const sheetFamily: Validator;
export const stockStand: Validator;
export const toolFamily: Validator;
