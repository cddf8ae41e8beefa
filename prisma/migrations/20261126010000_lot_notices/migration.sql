-- Notices about a lot: a coordinator tells the sites concerned what was found and what to do; who has read it is kept.

create table public.lot_notice (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "spawn_lot_id" UUID,
    "substrate_lot_id" UUID,
    "what_happened" TEXT NOT NULL,
    "what_to_do" TEXT NOT NULL,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "lot_notice_pkey" PRIMARY KEY ("network_id","id")
);
create index "lot_notice_network_id_spawn_lot_id_idx" on public.lot_notice("network_id", "spawn_lot_id");
create index "lot_notice_network_id_substrate_lot_id_idx" on public.lot_notice("network_id", "substrate_lot_id");
alter table public.lot_notice add constraint "lot_notice_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.lot_notice add constraint "lot_notice_network_id_spawn_lot_id_fkey" foreign key ("network_id", "spawn_lot_id") references public.spawn_lot("network_id", "id") on delete restrict on update no action;
alter table public.lot_notice add constraint "lot_notice_network_id_substrate_lot_id_fkey" foreign key ("network_id", "substrate_lot_id") references public.substrate_lot("network_id", "id") on delete restrict on update no action;
alter table public.lot_notice
  add constraint lot_notice_one_lot check (num_nonnulls(spawn_lot_id, substrate_lot_id) = 1),
  add constraint lot_notice_words check (length(trim(what_happened)) > 0 and length(trim(what_to_do)) > 0),
  add constraint lot_notice_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

create table public.lot_notice_site (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "notice_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "lot_notice_site_pkey" PRIMARY KEY ("network_id","id")
);
create unique index "lot_notice_site_network_id_notice_id_site_id_key" on public.lot_notice_site("network_id", "notice_id", "site_id");
alter table public.lot_notice_site add constraint "lot_notice_site_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.lot_notice_site add constraint "lot_notice_site_network_id_notice_id_fkey" foreign key ("network_id", "notice_id") references public.lot_notice("network_id", "id") on delete restrict on update no action;
alter table public.lot_notice_site add constraint "lot_notice_site_network_id_site_id_fkey" foreign key ("network_id", "site_id") references public.site("network_id", "id") on delete restrict on update no action;
alter table public.lot_notice_site
  add constraint lot_notice_site_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

-- One row for each person who pressed "read".
create table public.lot_notice_read (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "notice_id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "read_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "lot_notice_read_pkey" PRIMARY KEY ("network_id","id")
);
create unique index "lot_notice_read_network_id_notice_id_person_id_key" on public.lot_notice_read("network_id", "notice_id", "person_id");
alter table public.lot_notice_read add constraint "lot_notice_read_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.lot_notice_read add constraint "lot_notice_read_network_id_notice_id_fkey" foreign key ("network_id", "notice_id") references public.lot_notice("network_id", "id") on delete restrict on update no action;
alter table public.lot_notice_read add constraint "lot_notice_read_person_id_fkey" foreign key ("person_id") references public.person("id") on delete restrict on update no action;
alter table public.lot_notice_read
  add constraint lot_notice_read_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

do $$
declare t text;
begin
  foreach t in array array['lot_notice', 'lot_notice_site', 'lot_notice_read'] loop
    execute format('grant select, insert, update on public.%I to pinset_app, pinset_definer', t);
    execute format('create trigger keep_identity before update on public.%I for each row execute function app.keep_identity()', t);
    execute format('create trigger write_history after insert or update on public.%I for each row execute function app.write_history()', t);
    execute format('alter table public.%I enable row level security', t);
    execute format('alter table public.%I force row level security', t);
    execute format($p$create policy coordinator_all on public.%I for all to pinset_app
      using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
      with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')$p$, t);
  end loop;
end $$;

-- A member reads the notices to the own sites, and marks them read as themselves.
create policy member_own_sites on public.lot_notice_site for select to pinset_app
  using (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]));
create policy member_own_sites on public.lot_notice for select to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'member' and exists (
    select 1 from public.lot_notice_site s where s.network_id = lot_notice.network_id and s.notice_id = lot_notice.id
      and s.voided_at is null and s.site_id = any ((select app.site_ids())::uuid[])));
create policy member_own_read on public.lot_notice_read for select to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'member'
    and person_id = (select app.person_id()));
create policy member_own_add on public.lot_notice_read for insert to pinset_app
  with check (network_id = (select app.network_id()) and (select app.member_role()) = 'member'
    and person_id = (select app.person_id()) and exists (
      select 1 from public.lot_notice_site s where s.network_id = lot_notice_read.network_id
        and s.notice_id = lot_notice_read.notice_id and s.voided_at is null
        and s.site_id = any ((select app.site_ids())::uuid[])));
