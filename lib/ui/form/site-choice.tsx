import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { mostSitesListed } from '@/lib/base/most-sites-listed';
import { sentenceCase } from '../format/sentence-case';
import { type FieldContext, textOf } from './field-context';
import type { FieldSpec } from './field-spec';

type Select = Extract<FieldSpec, { kind: 'select' }>;

export function isLongSiteChoice(spec: FieldSpec): spec is Select {
  return spec.kind === 'select' && spec.name === 'site' && spec.options.length > mostSitesListed;
}

type Props = { readonly spec: Select; readonly context: FieldContext; readonly action: Route };

/**
 * The site of a filter where there are many: what is chosen, and the way to the page on which one is looked for, which takes
 * along what is chosen besides. It comes after the form's own button, or the enter key would press this one.
 */
export async function SiteChoice({ spec, context, action }: Props) {
  const t = await getTranslations('common');
  const chosen = textOf(context, 'site');
  const label = spec.options.find(({ value }) => value === chosen)?.label;
  return (
    <div className="field">
      <p className="field-label">
        {sentenceCase(spec.label)}
        {': '}
        {label ?? spec.emptyLabel ?? t('allSites')}
      </p>
      {label === undefined ? null : <input type="hidden" name="site" value={chosen} />}
      <button
        type="submit"
        className="button button-plain"
        formAction="/sites/choose"
        name="next"
        value={action}
      >
        {t('chooseSite')}
      </button>
    </div>
  );
}
