import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { readJudgedLot } from '@/lib/analysis/lot-question/lots-question';
import { formatMass } from '@/lib/growing/format-quantity';
import { isId } from '@/lib/records/fields/id-field';
import { listLotNotices } from '@/lib/records/lot-notice/list-lot-notices.query';
import { getSpawnLot } from '@/lib/records/spawn-lot/get-spawn-lot.query';
import { getWhereabouts } from '@/lib/records/trace/get-whereabouts.query';
import { CostLink } from '@/lib/ui/costs/cost-link';
import { formatDate } from '@/lib/ui/format/date-text';
import { LotUses } from '@/lib/ui/lots/lot-uses';
import { LotVerdict } from '@/lib/ui/lots/lot-verdict';
import { Receipts } from '@/lib/ui/lots/receipts';
import { LotNotices } from '@/lib/ui/notices/lot-notices';
import { NoticeSaved } from '@/lib/ui/notices/notice-saved';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { DefinitionList } from '@/lib/ui/page/definition-list';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { RecordLinks } from '@/lib/ui/page/record-links';
import { LotWhereabouts } from '@/lib/ui/trace/lot-whereabouts';
import { markNoticeReadAction } from '../../lot-notices/actions';

export default async function SpawnLotPage({ params, searchParams }: PageProps<'/spawn-lots/[id]'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const read = isId(id)
    ? await readAs(actor, async (context) => ({
        lot: await getSpawnLot(context, id),
        went: await getWhereabouts(context, 'spawn-lot', id),
        verdict: await readJudgedLot(context, id),
        notices: await listLotNotices(context, 'spawn-lot', id),
      }))
    : undefined;
  if (!read?.lot) return <NotThere />;
  const { lot, went, verdict, notices } = read;
  const { saved } = await searchParams;
  const t = await getTranslations('lots');
  const words = await getTranslations('vocabulary.spawnForm');
  const locale = await getLocale();
  const optional = (label: string, value: string | null) => (value === null ? [] : [{ label, value }]);
  const date = (value: string | null) => (value === null ? null : formatDate(value, locale));
  return (
    <>
      <Heading text={t('lotHeading', { what: lot.species[actor.language], code: lot.code })} />
      <NoticeSaved saved={saved} />
      <LotNotices
        lotKind="spawn-lot"
        lotId={id}
        notices={notices}
        standing={lot.voided === null}
        actor={actor}
        markRead={markNoticeReadAction}
      />
      <DefinitionList
        items={[
          ...(verdict === undefined
            ? []
            : [
                {
                  label: t('columns.verdict'),
                  value: <LotVerdict {...verdict} timeZone={actor.networkTimeZone} />,
                },
              ]),
          ...optional(t('columns.lastUsedOn'), date(went.lastUsedOn)),
          { label: t('columns.species'), value: <i>{lot.species.scientific}</i> },
          { label: t('columns.form'), value: words(lot.form) },
          ...optional(t('columns.strain'), lot.strain),
          ...optional(t('columns.maker'), lot.maker),
          ...optional(t('columns.makerCode'), lot.makerCode),
          ...optional(t('columns.madeOn'), date(lot.madeOn)),
          ...optional(t('columns.receivedOn'), date(lot.receivedOn)),
          ...optional(
            t('columns.received'),
            lot.receivedGrams === null ? null : formatMass(lot.receivedGrams, actor.massUnit, locale),
          ),
          {
            label: t('columns.generation'),
            value:
              lot.generation === null
                ? t('generationUnknown')
                : t('generation', { generation: lot.generation }),
          },
          ...(lot.parent === null
            ? []
            : [
                {
                  label: t('columns.parent'),
                  value: <Link href={`/spawn-lots/${lot.parent.id}`}>{lot.parent.code}</Link>,
                },
              ]),
          ...optional(t('columns.culture'), lot.cultureName),
          ...optional(t('columns.note'), lot.note),
        ]}
      />
      {lot.children.length === 0 ? null : (
        <>
          <h2>{t('childrenHeading')}</h2>
          <ul>
            {lot.children.map((child) => (
              <li key={child.id}>
                <Link href={`/spawn-lots/${child.id}`}>{child.code}</Link>
              </li>
            ))}
          </ul>
        </>
      )}
      <Receipts
        receipts={lot.receipts}
        massUnit={actor.massUnit}
        voidPath={(receiptId) => `/void/spawn-receipt/${receiptId}?back=/spawn-lots/${id}`}
      />
      {lot.voided === null ? (
        <p>
          <ButtonLink href={`/spawn-lots/${id}/receive` as Route} plain>
            {t('receive')}
          </ButtonLink>
        </p>
      ) : null}
      <LotWhereabouts kind="spawn-lot" id={id} went={went} reader={actor} />
      <LotUses batches={lot.batches} />
      <CostLink of="spawn-lot" id={id} />
      <RecordLinks
        path={`/spawn-lots/${id}`}
        kind="spawn-lot"
        id={id}
        voided={lot.voided}
        mayChange={actor.role === 'coordinator' || lot.createdById === actor.personId}
      />
    </>
  );
}
