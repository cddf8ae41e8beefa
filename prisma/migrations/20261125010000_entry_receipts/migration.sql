-- What the server has answered to an entry made on a phone, written in the transaction that makes the record, so that
-- the same entry sent again has its first answer and no second effect. A receipt is never changed or removed: the
-- application may only insert and read, and a phone that comes back after a year still finds its answer (about 250
-- bytes each).

create type public.entry_kind as enum ('weighing', 'finding', 'check', 'look', 'loss', 'reading', 'photo', 'undo');

create table public.entry_receipt (
    "network_id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "key" UUID NOT NULL,
    "entry_id" UUID NOT NULL,
    "kind" public.entry_kind NOT NULL,
    "request_hash" TEXT NOT NULL,
    "record_id" UUID NOT NULL,
    "revision" INTEGER NOT NULL,
    "saved_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "entry_receipt_pkey" PRIMARY KEY ("network_id","person_id","key")
);
create index "entry_receipt_network_id_person_id_entry_id_idx" on public.entry_receipt("network_id", "person_id", "entry_id");
alter table public.entry_receipt add constraint "entry_receipt_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.entry_receipt add constraint "entry_receipt_person_id_fkey" foreign key ("person_id") references public.person("id") on delete restrict on update no action;
alter table public.entry_receipt add constraint entry_receipt_hash check (request_hash ~ '^[0-9a-f]{64}$');

grant select, insert on public.entry_receipt to pinset_app;
grant select on public.entry_receipt to pinset_definer;
alter table public.entry_receipt enable row level security;
alter table public.entry_receipt force row level security;
create policy own_receipt on public.entry_receipt for all to pinset_app
  using (network_id = (select app.network_id()) and person_id = (select app.person_id())
    and (select app.member_role()) in ('coordinator', 'member'))
  with check (network_id = (select app.network_id()) and person_id = (select app.person_id())
    and (select app.member_role()) in ('coordinator', 'member'));
