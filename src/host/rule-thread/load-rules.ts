import { pathToFileURL } from "node:url";
import type { AnyRule } from "../../rules/shape/rule.ts";
import { codeOf } from "../failure-words.ts";
import type { ModuleToLoad } from "./protocol.ts";

const API = 1;
const TEAM_ID = /^[a-z][a-z0-9-]{0,63}:[a-z][a-z0-9-]{0,63}\.[a-z][a-z0-9-]{0,127}$/;
const LEVELS: readonly unknown[] = ["note", "hold", "reject"];

/** A module that holds no usable rules: which, and why. */
export class RulesUnusable extends Error {
  override readonly name = "RulesUnusable";
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null;
}

/** Why a value is not a rule of a team as this version knows them; undefined when it is one. */
function faultOf(rule: Readonly<Record<string, unknown>>): string | undefined {
  const { api, id, title, group, level, basis, needs, criteria, messages, inspect } = rule;
  if (api !== API) return `made for version ${String(api)} of the rule interface; this is version ${API}`;
  if (typeof id !== "string" || !TEAM_ID.test(id))
    return `its id is ${String(id)}; the id of a team's rule is like acme:joint.gusset-gap`;
  if (typeof title !== "string" || title === "") return `${id} has no title`;
  if (typeof group !== "string" || group === "") return `${id} has no group`;
  if (!LEVELS.includes(level)) return `${id} has the level ${String(level)}; levels are note, hold and reject`;
  if (!Array.isArray(basis) || !basis.every((word) => typeof word === "string")) return `${id} has no list of bases`;
  if (!isObject(needs) || !Object.values(needs).every((need) => isObject(need) && typeof need.id === "string")) {
    return `${id} needs something that is no fact`;
  }
  if (!isObject(criteria) || !Object.values(criteria).every((one) => isObject(one) && typeof one.name === "string")) {
    return `${id} has a criterion that is none`;
  }
  const texts = isObject(messages) ? Object.values(messages) : [];
  if (texts.length === 0 || !texts.every((one) => isObject(one) && typeof one.text === "string"))
    return `${id} has no messages`;
  return typeof inspect === "function" ? undefined : `${id} has no function inspect`;
}

/** Why a module cannot be loaded; the platform's words for a missing one hold absolute paths. */
function whyNot(error: unknown): string {
  if (codeOf(error) === "ERR_MODULE_NOT_FOUND") return "it, or a module it imports, does not exist";
  return error instanceof Error ? error.message : String(error);
}

/** The rules a module exports: every exported value made by defineRule. */
async function rulesOf({ path, name }: ModuleToLoad): Promise<readonly AnyRule[]> {
  let exports: Readonly<Record<string, unknown>>;
  try {
    exports = (await import(pathToFileURL(path).href)) as Readonly<Record<string, unknown>>;
  } catch (error) {
    throw new RulesUnusable(`the rule module ${name} cannot be loaded: ${whyNot(error)}`);
  }
  const rules: AnyRule[] = [];
  for (const value of Object.values(exports)) {
    if (!isObject(value) || !("inspect" in value)) continue;
    const fault = faultOf(value);
    if (fault !== undefined) throw new RulesUnusable(`a rule of ${name} cannot be used: ${fault}`);
    rules.push(value as unknown as AnyRule);
  }
  if (rules.length === 0) throw new RulesUnusable(`the rule module ${name} exports no rule`);
  return rules;
}

/**
 * The rules of a team in the order of its modules. Runs the modules' code.
 * @param starts called before each module, so that one that never ends can be named
 * @throws RulesUnusable for a module or rule that is not what it should be, or an id that stands twice
 */
export async function loadRules(
  modules: readonly ModuleToLoad[],
  starts?: (module: string) => void,
): Promise<readonly AnyRule[]> {
  const byId = new Map<string, AnyRule>();
  for (const module of modules) {
    starts?.(module.name);
    for (const rule of await rulesOf(module)) {
      const known = byId.get(rule.id);
      if (known !== undefined && known !== rule) throw new RulesUnusable(`two rules have the id ${rule.id}`);
      byId.set(rule.id, rule);
    }
  }
  return [...byId.values()];
}
