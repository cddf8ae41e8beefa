import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { addressValues } from '@/lib/ui/form/address-values';
import { Field } from '@/lib/ui/form/fields/field';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { Caution } from '@/lib/ui/page/caution';
import { Heading } from '@/lib/ui/page/heading';
import { LinkChips } from '@/lib/ui/page/link-chips';
import { loadSums } from '@/lib/ui/sums/load-sums';
import { pageSumFields, pageSums } from '@/lib/ui/sums/page-sums';
import { containerShapes } from '@/lib/ui/sums/volume-sum';

const careOf = { lime: ['lime', 'disposal'], heat: ['heat', 'burner'] } as const;
const usual = { 'plan.fuel': 'propane', 'plan.bedBottom': 'wood_chips', 'plan.bedCover': 'straw' };

export default async function SumsPage({ searchParams }: PageProps<'/sums'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const sum = pageSums.find((one) => one === address.what) ?? 'lime';
  const shape = containerShapes.find((one) => one === address.shape) ?? 'box';
  const t = await getTranslations('sums');
  const treatments = await getTranslations('treatments.care');
  const common = await getTranslations('common');
  const makeSums = await loadSums(actor);
  const fields = await pageSumFields(sum, actor, shape);
  const context = {
    values: { ...usual, ...addressValues(fields, address), shape, what: sum },
    errors: [],
    words: await loadFormWords(),
  };
  const target =
    sum === 'lime' || sum === 'heat'
      ? { path: '/treatments/new', label: t('toTreatment') }
      : { path: '/batches/new', label: t('toBatch') };
  return (
    <>
      <Heading text={t('heading')} />
      <p>{t('intro')}</p>
      <LinkChips
        label={t('which')}
        chosen={sum}
        options={pageSums.map((one) => ({ value: one, label: t(`kind.${one}`), href: `/sums?what=${one}` }))}
      />
      <h2>{t(`kind.${sum}`)}</h2>
      {sum === 'lime' || sum === 'heat' ? (
        <Caution
          title={common('caution.title')}
          lines={[...careOf[sum].map((one) => treatments(one)), common('caution.rule')]}
        />
      ) : null}
      {sum === 'volume' ? (
        <LinkChips
          label={t('fields.shape')}
          chosen={shape}
          options={containerShapes.map((one) => ({
            value: one,
            label: t(`shape.${one}`),
            href: `/sums?what=volume&shape=${one}`,
          }))}
        />
      ) : null}
      <form key={`${sum} ${shape}`} action="/sums" method="get" noValidate className="record-form">
        <div className="record-fields">
          <Field spec={{ kind: 'hidden', name: 'what' }} context={context} />
          {fields.map((field) => (
            <Field key={field.name} spec={field} context={context} />
          ))}
          <Field
            spec={makeSums({ name: 'worked', kinds: [sum], heading: t('result'), carryTo: target })}
            context={context}
          />
        </div>
      </form>
    </>
  );
}
