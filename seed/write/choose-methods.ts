import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import type { MethodKind } from '@/lib/growing/vocabulary';
import { chooseSiteMethods } from '@/lib/records/site-method/choose-site-methods.command';
import { chooseSiteMethodsInput } from '@/lib/records/site-method/choose-site-methods.input';
import { inOneGo } from './in-one-go';

/** Sites that have said what else they could use besides what they always did. */
const said: Readonly<Record<string, readonly MethodKind[]>> = {
  BRIAR: ['cold_lime_soak', 'cold_ferment', 'hot_water_bath'],
  ELDER: ['hot_water_bath', 'cold_lime_soak', 'steam'],
  TARN: ['hot_water_bath', 'cold_lime_soak', 'cold_ferment'],
};

/** Records which methods some sites can use. */
export async function chooseMethods(coordinator: Actor, siteIds: ReadonlyMap<string, string>): Promise<void> {
  const methods = await readAs(coordinator, ({ db }) =>
    db.method.findMany({ where: { voidedAt: null }, select: { id: true, kind: true } }),
  );
  await inOneGo(coordinator, async (take) => {
    for (const [code, kinds] of Object.entries(said)) {
      await take(chooseSiteMethodsInput, chooseSiteMethods, {
        id: siteIds.get(code),
        revision: 0,
        methodIds: methods.filter(({ kind }) => kinds.includes(kind)).map(({ id }) => id),
        reason: 'asked at the autumn meeting',
      });
    }
  });
}
