import { getLocale, getTranslations } from 'next-intl/server';
import type { GuideField, GuideOperation, GuideSection } from '@/lib/api/document/guide';
import { labelOf } from '../form/problem-text';
import { sentenceCase } from '../format/sentence-case';
import type { DynamicWords } from '../i18n/dynamic-words';
import { wordsFor } from '../i18n/words-for';
import { DataTable } from '../table/data-table';

async function FieldTable({
  caption,
  fields,
  area,
}: {
  caption: string;
  fields: readonly GuideField[];
  area: string;
}) {
  const t = await getTranslations('api.guide');
  const locale = await getLocale();
  const words: DynamicWords = wordsFor(locale.startsWith('es') ? 'es' : 'en', locale);
  const meaning = ({ field }: GuideField) => {
    const own = `api.guide.fields.${field.split('.').at(-1)}`;
    if (words.has(own)) return words(own);
    const label = labelOf(words, area, field);
    return label === field ? '' : sentenceCase(label);
  };
  return (
    <DataTable
      caption={caption}
      rows={fields}
      rowKey={({ name }) => name}
      columns={[
        { key: 'name', header: t('columns.name'), cell: ({ name }) => <code>{name}</code> },
        { key: 'meaning', header: t('columns.meaning'), cell: meaning },
        { key: 'type', header: t('columns.type'), cell: ({ type }) => <code>{type}</code> },
        {
          key: 'required',
          header: t('columns.required'),
          cell: ({ required }) => t(required ? 'yes' : 'no'),
        },
      ]}
    />
  );
}

async function Operation({ operation }: { operation: GuideOperation }) {
  const t = await getTranslations('api.guide');
  const { verb, method, path, body, query, ifMatch, area } = operation;
  const fields = body.length > 0 ? body : query;
  const locale = await getLocale();
  const words: DynamicWords = wordsFor(locale.startsWith('es') ? 'es' : 'en', locale);
  const title = words(`api.guide.does.${verb}`);
  return (
    <details>
      <summary>
        {title} <code>{`${method} ${path}`}</code>
      </summary>
      {ifMatch ? <p>{t('needsRevision')}</p> : null}
      {fields.length === 0 ? (
        <p>{t('noFields')}</p>
      ) : (
        <FieldTable
          caption={t(body.length > 0 ? 'bodyCaption' : 'queryCaption', { operation: title })}
          fields={fields}
          area={area}
        />
      )}
    </details>
  );
}

/** Every operation by kind of record, each with what it takes. */
export async function OperationGuide({ sections }: { sections: readonly GuideSection[] }) {
  const locale = await getLocale();
  const words: DynamicWords = wordsFor(locale.startsWith('es') ? 'es' : 'en', locale);
  return sections.map(({ kind, operations }) => (
    <section key={kind} aria-labelledby={`kind-${kind}`}>
      <h3 id={`kind-${kind}`}>{words(`api.guide.kinds.${kind}`)}</h3>
      {operations.map((operation) => (
        <Operation key={operation.name} operation={operation} />
      ))}
    </section>
  ));
}
