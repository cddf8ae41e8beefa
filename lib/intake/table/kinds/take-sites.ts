import 'server-only';
import { addSites } from '@/lib/records/site/add-sites';
import { addSiteInput } from '@/lib/records/site/site.input';
import { setTaker } from '../set-taker';
import type { Taker, TakeSettings } from '../taker';

/** A site is the same by its code. What a list of gardens seldom says is taken from the network. */
export function takeSites(settings: TakeSettings): Taker {
  return setTaker(
    addSiteInput,
    {
      make: (context, asked) =>
        addSites(
          context,
          asked.map(({ input }) => input),
        ),
      raw: (values, _settings, { actor }) => ({
        kind: 'other',
        timeZone: actor.networkTimeZone,
        ...Object.fromEntries(values),
        trimDefault: values.get('trimState') ?? 'as_picked',
      }),
      scopeOf: () => 'network',
      keyOf: ({ code }) => code,
      readKeys: async ({ db }) =>
        (await db.site.findMany({ select: { id: true, code: true } })).map(({ id, code }) => ({
          key: code,
          id,
        })),
    },
    settings,
  );
}
