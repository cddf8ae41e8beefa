import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { MassUnit, VolumeUnit } from '@/lib/database/generated/enums';
import { layerLitres } from '@/lib/growing/layer-volume';
import type { BatchView, BedLayerView } from '@/lib/records/batch/batch-view';
import { formatDate } from '../format/date-text';
import { formatLength } from '../format/length-text';
import { formatVolume } from '../format/volume-text';
import { Link } from '../page/link';

type Props = {
  readonly batch: BatchView;
  readonly massUnit: MassUnit;
  readonly volumeUnit: VolumeUnit;
};

/** What a bed is layered of, from the ground up, with the volume typed or worked out from thickness and area. */
export async function BedLayers({ batch, massUnit, volumeUnit }: Props) {
  const t = await getTranslations('batches.layers');
  const words = await getTranslations('vocabulary.bedLayerMaterial');
  const common = await getTranslations('common');
  const locale = await getLocale();
  const { id, layers, bedAreaCm2, inoculatedOn } = batch;
  const told = (layer: BedLayerView) => {
    const { thicknessMm, millilitres, laidOn } = layer;
    const worked =
      millilitres === null && thicknessMm !== null && bedAreaCm2 !== null
        ? layerLitres(thicknessMm, bedAreaCm2)
        : null;
    return [
      words(layer.material),
      ...(thicknessMm === null ? [] : [formatLength(thicknessMm, massUnit, locale)]),
      ...(millilitres === null ? [] : [formatVolume(millilitres / 1000, volumeUnit, locale)]),
      ...(worked === null ? [] : [t('about', { volume: formatVolume(worked, volumeUnit, locale) })]),
      ...(laidOn === inoculatedOn ? [] : [t('laidOn', { date: formatDate(laidOn, locale) })]),
    ].join(', ');
  };
  return (
    <section>
      <h2>{t('heading')}</h2>
      {layers.length === 0 ? (
        <p>{t('none')}</p>
      ) : (
        <ol>
          {layers.map((layer) => (
            <li key={layer.id}>
              {told(layer)}{' '}
              <Link className="no-print" href={`/void/bed-layer/${layer.id}?back=/batches/${id}` as Route}>
                {common('void')}
                <span className="visually-hidden">: {words(layer.material)}</span>
              </Link>
            </li>
          ))}
        </ol>
      )}
      {batch.voidReason === null ? (
        <p className="record-links">
          <Link href={`/batches/${id}/layers/new` as Route}>
            {t(layers.length === 0 ? 'add' : 'addOnTop')}
          </Link>
        </p>
      ) : null}
    </section>
  );
}
