import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { ReactNode } from 'react';
import type { Language, MassUnit } from '@/lib/database/generated/enums';
import { formatMass } from '@/lib/growing/format-quantity';
import { findLogWood } from '@/lib/growing/log-wood';
import { secondLifeFirstMushrooms } from '@/lib/growing/second-life';
import type { BatchView } from '@/lib/records/batch/batch-view';
import type { BatchPage } from '@/lib/records/batch/get-batch.query';
import { dateSpan } from '../format/date-span';
import { formatArea, formatLength } from '../format/length-text';
import { formatMassWithTwin } from '../format/mass-text';
import { formatPercent } from '../format/percent-text';
import { NoteText } from '../history/note-text';
import { type Definition, DefinitionList } from '../page/definition-list';
import { Link } from '../page/link';
import { BatchLinks } from './batch-links';

type Props = { readonly page: BatchPage; readonly language: Language; readonly unit: MassUnit };

/** How a batch was started: what it is made of, and how its dry mass was worked out. */
export async function BatchFacts({ page, language, unit }: Props) {
  const t = await getTranslations('batches.facts');
  const words = await getTranslations('vocabulary');
  const locale = await getLocale();
  const { batch } = page;
  const mass = (grams: number) => formatMass(grams, unit, locale);
  const fact = (label: string, value: ReactNode): Definition[] =>
    value === null || value === '' ? [] : [{ label, value }];

  const component = (one: BatchView['components'][number], index: number) => {
    const text = t('component', {
      material: one.material[language],
      lot: one.lotCode,
      method: one.method[language],
    });
    const grams =
      one.grams === null
        ? ''
        : `, ${t('componentMass', { mass: mass(one.grams), stage: t(`stage.${one.massStage}`) })}`;
    const role = one.role === 'substrate' ? '' : ` · ${words(`componentRole.${one.role}`)}`;
    return (
      <li key={`${one.lotId} ${index}`}>
        {text}
        {one.runId === null || one.runCode === null ? null : (
          <>
            {', '}
            <Link href={`/treatments/${one.runId}` as Route}>{t('run', { code: one.runCode })}</Link>
          </>
        )}
        {`${grams}${role}`}
      </li>
    );
  };

  const dry =
    batch.dryGrams === null
      ? t('dryUnknown')
      : [
          `${formatMassWithTwin(batch.dryGrams, unit, locale)}. ${words(`dryMassFrom.${batch.dryMassFrom}`)}`,
          ...(batch.drySupplementGrams > 0
            ? [t('ofWhichSupplement', { mass: mass(batch.drySupplementGrams) })]
            : []),
          ...(batch.dryAssumed ? [words('moistureSource.assumed')] : []),
        ].join('; ');
  const wood = batch.logWoodCode === null ? undefined : findLogWood(batch.logWoodCode);
  const log = [
    wood?.name[language],
    batch.logDiameterMm === null || batch.logLengthMm === null
      ? undefined
      : t('logSize', {
          diameter: formatLength(batch.logDiameterMm, unit, locale),
          length: formatLength(batch.logLengthMm, unit, locale),
        }),
    batch.logGreenGrams === null ? undefined : mass(batch.logGreenGrams),
  ].filter((part) => part !== undefined);
  const spawn = batch.spawn.map(({ lotCode, grams }) =>
    grams === null ? lotCode : t('spawnMass', { lot: lotCode, mass: mass(grams) }),
  );
  const starter = batch.startedById === null ? '' : (page.names[batch.startedById] ?? '');
  const hasNoBe = batch.secondLife || batch.containerKind === 'bed';
  const awaited = batch.secondLife && batch.closedOn === null && page.figures.weighings === 0;
  const days = secondLifeFirstMushrooms(batch.inoculatedOn);
  const expected = awaited ? t('expectedValue', dateSpan(days.from, days.to, locale)) : '';
  return (
    <>
      <DefinitionList
        items={[
          ...fact(t('species'), `${batch.species[language]} (${batch.species.scientific})`),
          ...fact(t('startedBy'), starter),
          ...fact(
            t('secondLifeWay'),
            batch.secondLifeWay === null ? '' : words(`secondLifeWay.${batch.secondLifeWay}`),
          ),
          ...fact(t('expected'), expected),
          ...(batch.components.length === 0
            ? []
            : fact(t('material'), <ul className="plain-list">{batch.components.map(component)}</ul>)),
          ...fact(t('spawn'), spawn.join(', ')),
          ...fact(t('log'), log.join(', ')),
          ...fact(t('area'), batch.bedAreaCm2 === null ? '' : formatArea(batch.bedAreaCm2, unit, locale)),
          ...fact(t('wet'), batch.wetGrams === null ? '' : formatMassWithTwin(batch.wetGrams, unit, locale)),
          ...fact(
            t('moisture'),
            batch.moisturePercent === null
              ? ''
              : t('moistureValue', {
                  percent: formatPercent(batch.moisturePercent, locale),
                  source: words(`moistureSource.${batch.moistureSource}`).toLocaleLowerCase(),
                }),
          ),
          ...(batch.dryGrams === null && hasNoBe ? [] : fact(t('dry'), dry)),
          ...fact(
            t('note'),
            batch.note === null ? (
              ''
            ) : (
              <NoteText
                kind="batch"
                id={batch.id}
                note={batch.note}
                fixed={batch.siteLeft || batch.voidReason !== null}
              />
            ),
          ),
        ]}
      />
      <BatchLinks page={page} />
    </>
  );
}
