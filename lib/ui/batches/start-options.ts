import { getLocale, getTranslations } from 'next-intl/server';
import type { Language } from '@/lib/database/generated/enums';
import { dateInZone } from '@/lib/growing/calendar-date';
import { logWoods } from '@/lib/growing/log-wood';
import type { StartChoices } from '@/lib/records/batch/list-start-choices.query';
import type { ChoiceOption } from '../form/field-spec';
import { namedOptions } from '../form/named-options';
import { formatDayMonth } from '../format/date-text';
import { loadSiteWords } from '../sharing/site-words';

export type StartOptions = {
  readonly sites: readonly { readonly id: string; readonly name: string }[];
  readonly species: readonly ChoiceOption[];
  readonly lots: readonly ChoiceOption[];
  readonly treatments: readonly ChoiceOption[];
  readonly spawn: readonly ChoiceOption[];
  readonly woods: readonly ChoiceOption[];
  /** People of the actor's sites, one of whom started the batch. */
  readonly colleagues: readonly ChoiceOption[];
};

/** The lists of the batch form in the reader's words; one list offers recorded runs and methods without a run. */
export async function startOptions(choices: StartChoices, language: Language): Promise<StartOptions> {
  const t = await getTranslations('batches');
  const locale = await getLocale();
  const siteWords = await loadSiteWords();
  const runs = choices.runs.map((run) => ({
    value: `run:${run.id}`,
    label: t('runOption', {
      method: run.method[language],
      code: run.code,
      date: formatDayMonth(dateInZone(run.startedAt, run.timeZone), locale),
      site: siteWords(run.site),
    }),
  }));
  const methods = choices.methods.map((method) => ({
    value: `method:${method.id}`,
    label: method.kind === 'untreated' ? method[language] : t('methodOption', { method: method[language] }),
  }));
  return {
    sites: choices.sites,
    species: namedOptions(choices.species, language),
    lots: choices.substrateLots.map((lot) => ({
      value: lot.id,
      label: `${lot.material[language]} · ${lot.code}${lot.sourceName === null ? '' : ` · ${lot.sourceName}`}`,
    })),
    treatments: [...runs, ...methods],
    spawn: choices.spawnLots.map((lot) => ({
      value: lot.id,
      label: `${lot.species[language]} · ${lot.code}`,
    })),
    colleagues: choices.colleagues.map(({ id, name }) => ({ value: id, label: name })),
    woods: logWoods.map((wood) => ({ value: String(wood.fiaCode), label: wood.name[language] })),
  };
}
