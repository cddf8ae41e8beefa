import { getTranslations } from 'next-intl/server';
import type { RecordTableKind } from '@/lib/growing/record-table-layout';
import type { FieldSpec, FormState } from '../form/field-spec';
import { Field } from '../form/fields/field';
import { FieldFrame } from '../form/fields/field-frame';
import { FileForm } from '../form/file-form';
import { loadFormWords } from '../form/load-form-words';
import { type SiteBox, siteSelect } from '../sites/site-select';

type Props = {
  readonly kinds: readonly RecordTableKind[];
  /** A file need not be of one site: none is asked for before. */
  readonly site: SiteBox;
  readonly most: { readonly max: number; readonly rows: number };
  readonly values: FormState['values'];
  readonly errors: FormState['errors'];
};

/** Choosing a file and saying what its rows are. */
export async function UploadForm({ kinds, site, most, values, errors }: Props) {
  const t = await getTranslations('import');
  const words = await loadFormWords();
  const context = { values, errors, words };
  const kind: FieldSpec = {
    kind: 'radio',
    name: 'kind',
    label: t('new.kind'),
    options: kinds.map((value) => ({ value, label: t(`kind.${value}`) })),
  };
  const place: FieldSpec = {
    ...siteSelect(site, t('new.site')),
    ...{ hint: t('new.siteHint'), emptyLabel: t('new.anySite') },
  };
  const file = { name: 'file', label: t('new.file'), hint: t('new.fileHint', most) };
  return (
    <FileForm
      action="/api/import"
      heading={t('heading')}
      label={t('new.heading')}
      intro={<p>{t('intro')}</p>}
      errors={errors}
      known={['file', 'kind', 'siteId']}
      submitLabel={t('new.submit')}
      words={words}
    >
      <div className="record-fields">
        <FieldFrame spec={file} context={context}>
          <input
            id="field-file"
            name="file"
            type="file"
            accept=".csv,.tsv,.txt,.xlsx,text/csv,text/plain"
            className="input"
            aria-describedby={errors.length > 0 ? 'field-file-hint field-file-error' : 'field-file-hint'}
          />
        </FieldFrame>
        <Field spec={kind} context={context} />
        <Field spec={place} context={context} />
      </div>
    </FileForm>
  );
}
