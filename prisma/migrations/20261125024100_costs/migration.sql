-- What a batch or a treatment run cost, and what lots cost by mass. A part that is null was not recorded; 0 says that
-- there was none. Amounts are whole minor units (cents) of the currency beside them.

create table public.cost_note (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "site_id" UUID NOT NULL,
    "batch_id" UUID,
    "treatment_run_id" UUID,
    "labour_minutes" INTEGER,
    "supplies_minor" INTEGER,
    "fuel_minor" INTEGER,
    "water_minor" INTEGER,
    "currency" CHAR(3) NOT NULL,
    "note" TEXT,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "cost_note_pkey" PRIMARY KEY ("network_id","id")
);
create unique index cost_note_once_a_batch on public.cost_note (network_id, batch_id) where voided_at is null;
create unique index cost_note_once_a_run on public.cost_note (network_id, treatment_run_id) where voided_at is null;
alter table public.cost_note add constraint "cost_note_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.cost_note add constraint "cost_note_network_id_site_id_batch_id_fkey" foreign key ("network_id", "site_id", "batch_id") references public.batch("network_id", "site_id", "id") on delete restrict on update cascade;
alter table public.cost_note add constraint "cost_note_network_id_site_id_treatment_run_id_fkey" foreign key ("network_id", "site_id", "treatment_run_id") references public.treatment_run("network_id", "site_id", "id") on delete restrict on update cascade;
alter table public.cost_note
  add constraint cost_note_of_one check (num_nonnulls(batch_id, treatment_run_id) = 1),
  add constraint cost_note_amounts check (labour_minutes >= 0 and supplies_minor >= 0 and fuel_minor >= 0 and water_minor >= 0),
  add constraint cost_note_currency check (currency ~ '^[A-Z]{3}$'),
  add constraint cost_note_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

create table public.lot_price (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "substrate_lot_id" UUID,
    "spawn_lot_id" UUID,
    "paid_minor" INTEGER NOT NULL,
    "for_grams" INTEGER NOT NULL,
    "currency" CHAR(3) NOT NULL,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "lot_price_pkey" PRIMARY KEY ("network_id","id")
);
create unique index lot_price_once_a_substrate_lot on public.lot_price (network_id, substrate_lot_id) where voided_at is null;
create unique index lot_price_once_a_spawn_lot on public.lot_price (network_id, spawn_lot_id) where voided_at is null;
alter table public.lot_price add constraint "lot_price_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.lot_price add constraint "lot_price_network_id_substrate_lot_id_fkey" foreign key ("network_id", "substrate_lot_id") references public.substrate_lot("network_id", "id") on delete restrict on update no action;
alter table public.lot_price add constraint "lot_price_network_id_spawn_lot_id_fkey" foreign key ("network_id", "spawn_lot_id") references public.spawn_lot("network_id", "id") on delete restrict on update no action;
alter table public.lot_price
  add constraint lot_price_of_one check (num_nonnulls(substrate_lot_id, spawn_lot_id) = 1),
  add constraint lot_price_amounts check (paid_minor >= 0 and for_grams > 0),
  add constraint lot_price_currency check (currency ~ '^[A-Z]{3}$'),
  add constraint lot_price_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

grant select, insert, update on public.cost_note, public.lot_price to pinset_app, pinset_definer;

do $$
declare t text;
begin
  foreach t in array array['cost_note', 'lot_price'] loop
    execute format('alter table public.%I enable row level security', t);
    execute format('alter table public.%I force row level security', t);
    execute format($p$create policy coordinator_all on public.%I for all to pinset_app
      using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
      with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')$p$, t);
    execute format('create trigger keep_identity before update on public.%I for each row execute function app.keep_identity()', t);
    execute format('create trigger write_history after insert or update on public.%I for each row execute function app.write_history()', t);
  end loop;
end $$;
create policy member_own_sites on public.cost_note for all to pinset_app
  using (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]))
  with check (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]));

-- As lots themselves: every member reads and adds, only the coordinator or whoever added a price mends it.
create policy member_read on public.lot_price for select to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'member');
create policy member_add on public.lot_price for insert to pinset_app
  with check (network_id = (select app.network_id()) and (select app.member_role()) = 'member'
    and created_by_id = (select app.person_id()));
create policy member_mend on public.lot_price for update to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'member'
    and created_by_id = (select app.person_id()))
  with check (network_id = (select app.network_id()) and created_by_id = (select app.person_id()));
