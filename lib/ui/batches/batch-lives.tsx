import { getLocale, getTranslations } from 'next-intl/server';
import type { LivesTogether } from '@/lib/analysis/single-batch/lives-together';
import type { MassUnit } from '@/lib/database/generated/enums';
import { formatMass } from '@/lib/growing/format-quantity';
import { FigureCell } from '../figure/figure-cell';
import { loadFigureViews } from '../figure/load-figure-views';
import { DefinitionList } from '../page/definition-list';

type Props = {
  readonly lives: readonly LivesTogether[];
  readonly unit: MassUnit;
  readonly timeZone: string;
};

/** First life, later lives and both together of each first batch; nothing of it is called biological efficiency. */
export async function BatchLives({ lives, unit, timeZone }: Props) {
  const t = await getTranslations('batches.lives');
  const locale = await getLocale();
  const view = await loadFigureViews(timeZone, unit);
  const mass = (grams: number | null) => (grams === null ? t('unseen') : formatMass(grams, unit, locale));
  return (
    <section>
      <h2>{t('heading')}</h2>
      <p>{t('intro')}</p>
      {lives.map((one) => {
        const together = view(one.perDryGramOfFirst);
        return (
          <div key={one.id}>
            {lives.length === 1 ? null : <h3>{one.code}</h3>}
            <DefinitionList
              items={[
                { label: t('firstLife', { code: one.code }), value: mass(one.firstGrams) },
                { label: t('later'), value: mass(one.laterGrams) },
                { label: t('together'), value: mass(one.togetherGrams) },
                {
                  label: t('perDry'),
                  value: (
                    <>
                      <FigureCell view={{ ...together, marks: [] }} /> {together.unit}
                      {[together.history.parts, ...together.marks, ...together.history.leftOut]
                        .filter((text) => text !== '')
                        .map((text) => (
                          <span key={text} className="cell-reason">
                            {text}
                          </span>
                        ))}
                    </>
                  ),
                },
              ]}
            />
          </div>
        );
      })}
    </section>
  );
}
