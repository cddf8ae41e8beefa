import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { sentenceCase } from '../format/sentence-case';
import { Link } from '../page/link';
import { addressWith } from '../table/address-with';
import { type FieldContext, textOf } from './field-context';
import type { FieldSpec } from './field-spec';

/** More sites than this nobody finds in a list that rolls on a phone. */
const most = 100;

type Select = Extract<FieldSpec, { kind: 'select' }>;

export function isLongSiteChoice(spec: FieldSpec): spec is Select {
  return spec.kind === 'select' && spec.name === 'site' && spec.options.length > most;
}

type Props = { readonly spec: Select; readonly context: FieldContext; readonly action: Route };

/** The site of a filter where there are many: what is chosen, and the way to the page on which one is looked for. */
export async function SiteChoice({ spec, context, action }: Props) {
  const t = await getTranslations('common');
  const chosen = textOf(context, 'site');
  const label = spec.options.find(({ value }) => value === chosen)?.label;
  const next = addressWith(action, context.values, {});
  return (
    <div className="field">
      <p className="field-label">
        {sentenceCase(spec.label)}
        {': '}
        {label ?? spec.emptyLabel ?? t('allSites')}
      </p>
      {label === undefined ? null : <input type="hidden" name="site" value={chosen} />}
      <Link className="button button-plain" href={`/sites/choose?next=${encodeURIComponent(next)}` as Route}>
        {t('chooseSite')}
      </Link>
    </div>
  );
}
