/** Changes to what the core is asked, in which `undefined` leaves a choice to the core again. Pure. */

export type Patch<Asked> = { [Name in keyof Asked]?: Asked[Name] | undefined };

/** What is asked after a change; a choice that was left to the core does not stand in it at all. */
export function patched<Asked extends object>(before: Asked, change: Patch<Asked>): Asked {
  const after = { ...before, ...change };
  for (const name of Object.keys(change) as (keyof Asked)[]) if (after[name] === undefined) delete after[name];
  return after as Asked;
}
