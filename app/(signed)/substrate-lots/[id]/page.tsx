import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { formatMass } from '@/lib/growing/format-quantity';
import { isId } from '@/lib/records/fields/id-field';
import { listLotNotices } from '@/lib/records/lot-notice/list-lot-notices.query';
import { getSubstrateLot } from '@/lib/records/substrate-lot/get-substrate-lot.query';
import { getWhereabouts } from '@/lib/records/trace/get-whereabouts.query';
import { CostLink } from '@/lib/ui/costs/cost-link';
import { formatDate } from '@/lib/ui/format/date-text';
import { formatLength } from '@/lib/ui/format/length-text';
import { lotMoisture } from '@/lib/ui/lots/lot-moisture';
import { LotUses } from '@/lib/ui/lots/lot-uses';
import { Receipts } from '@/lib/ui/lots/receipts';
import { LotNotices } from '@/lib/ui/notices/lot-notices';
import { NoticeSaved } from '@/lib/ui/notices/notice-saved';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { DefinitionList } from '@/lib/ui/page/definition-list';
import { Heading } from '@/lib/ui/page/heading';
import { NotThere } from '@/lib/ui/page/not-there';
import { RecordLinks } from '@/lib/ui/page/record-links';
import { LotWhereabouts } from '@/lib/ui/trace/lot-whereabouts';
import { markNoticeReadAction } from '../../lot-notices/actions';

export default async function SubstrateLotPage({ params, searchParams }: PageProps<'/substrate-lots/[id]'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const read = isId(id)
    ? await readAs(actor, async (context) => ({
        lot: await getSubstrateLot(context, id),
        went: await getWhereabouts(context, 'substrate-lot', id),
        notices: await listLotNotices(context, 'substrate-lot', id),
      }))
    : undefined;
  if (!read?.lot) return <NotThere />;
  const { lot, went, notices } = read;
  const { saved } = await searchParams;
  const t = await getTranslations('lots');
  const locale = await getLocale();
  const moisture = await lotMoisture();
  const optional = (label: string, value: string | null) => (value === null ? [] : [{ label, value }]);
  return (
    <>
      <Heading text={t('lotHeading', { what: lot.material[actor.language], code: lot.code })} />
      <NoticeSaved saved={saved} />
      <LotNotices
        lotKind="substrate-lot"
        lotId={id}
        notices={notices}
        standing={lot.voided === null}
        actor={actor}
        markRead={markNoticeReadAction}
      />
      <DefinitionList
        items={[
          { label: t('columns.receivedOn'), value: formatDate(lot.receivedOn, locale) },
          { label: t('columns.moisture'), value: moisture(lot) },
          ...optional(t('columns.source'), lot.sourceName),
          ...optional(
            t('columns.received'),
            lot.receivedGrams === null ? null : formatMass(lot.receivedGrams, actor.massUnit, locale),
          ),
          ...optional(
            t('columns.cutLength'),
            lot.cutLengthMm === null ? null : formatLength(lot.cutLengthMm, actor.massUnit, locale),
          ),
          ...optional(t('columns.note'), lot.note),
        ]}
      />
      <Receipts
        receipts={lot.receipts}
        massUnit={actor.massUnit}
        voidPath={(receiptId) => `/void/substrate-receipt/${receiptId}?back=/substrate-lots/${id}`}
      />
      {lot.voided === null ? (
        <p>
          <ButtonLink href={`/substrate-lots/${id}/receive` as Route} plain>
            {t('receive')}
          </ButtonLink>
        </p>
      ) : null}
      <LotWhereabouts kind="substrate-lot" id={id} went={went} reader={actor} />
      <LotUses batches={lot.batches} />
      <CostLink of="substrate-lot" id={id} />
      <RecordLinks
        path={`/substrate-lots/${id}`}
        kind="substrate-lot"
        id={id}
        voided={lot.voided}
        mayChange={actor.role === 'coordinator' || lot.createdById === actor.personId}
      />
    </>
  );
}
