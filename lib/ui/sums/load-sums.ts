import 'server-only';
import { getLocale, getTranslations } from 'next-intl/server';
import type { Person } from '@/lib/access/actor';
import type { FieldSpec } from '../form/field-spec';
import { loadMessages } from '../messages/load-messages';
import type { SumFacts } from './sum-input';
import type { SumSpec, SumTarget } from './sum-spec';
import type { SumKind } from './work-out';

type Ask = {
  readonly name: string;
  readonly kinds: readonly SumKind[];
  readonly heading: string;
  readonly carryTo?: SumTarget;
};

/** Makes fields that show sums, all of one form with the same words and facts, which so travel once. */
export async function loadSums(
  person: Pick<Person, 'language' | 'massUnit' | 'temperatureUnit' | 'volumeUnit'>,
  facts: SumFacts | null = null,
): Promise<(ask: Ask) => FieldSpec> {
  const t = await getTranslations('sums');
  const locale = await getLocale();
  const { language, massUnit, temperatureUnit, volumeUnit } = person;
  const words = loadMessages(language).sums.lines;
  const reader = { locale, massUnit, temperatureUnit, volumeUnit, language };
  const workOut = t('workOut');
  return ({ name, kinds, heading, carryTo }) => {
    const sums: SumSpec = {
      ...{ kinds, heading, words, reader, facts, workOut },
      ...(carryTo === undefined ? {} : { carryTo }),
    };
    return { kind: 'sums', name, sums };
  };
}
