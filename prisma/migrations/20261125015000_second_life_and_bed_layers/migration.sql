-- How a second life goes on, what a bed is layered of, and what each end of a second life may know of the other.

create type public.second_life_way as enum ('buried_in_soil', 'mulched_with_straw', 'mulched_with_chips', 'laid_out', 'other');
alter table public.batch add column second_life_way public.second_life_way;
alter table public.batch add constraint batch_way_of_second_life check (second_life or second_life_way is null);

create type public.bed_layer_material as enum ('wood_chips', 'sawdust', 'cardboard', 'straw', 'spent_substrate', 'compost', 'soil', 'spawn', 'other');

create table public.bed_layer (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "batch_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "laid_on" DATE NOT NULL,
    "position" INTEGER NOT NULL,
    "material" public.bed_layer_material NOT NULL,
    "thickness_mm" INTEGER,
    "millilitres" INTEGER,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "bed_layer_pkey" PRIMARY KEY ("network_id","id")
);
create index "bed_layer_network_id_batch_id_idx" on public.bed_layer("network_id", "batch_id");
alter table public.bed_layer add constraint "bed_layer_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.bed_layer add constraint "bed_layer_network_id_site_id_batch_id_fkey" foreign key ("network_id", "site_id", "batch_id") references public.batch("network_id", "site_id", "id") on delete restrict on update cascade;
alter table public.bed_layer
  add constraint bed_layer_position check (position between 1 and 200),
  add constraint bed_layer_thickness check (thickness_mm between 1 and 2000),
  add constraint bed_layer_millilitres check (millilitres > 0),
  add constraint bed_layer_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

grant select, insert, update on public.bed_layer to pinset_app, pinset_definer;
alter table public.bed_layer enable row level security;
alter table public.bed_layer force row level security;
create policy coordinator_all on public.bed_layer for all to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
  with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator');
create policy member_own_sites on public.bed_layer for all to pinset_app
  using (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]))
  with check (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]));
create trigger keep_identity before update on public.bed_layer for each row execute function app.keep_identity();
create trigger write_history after insert or update on public.bed_layer for each row execute function app.write_history();

-- The other ends of the second lives of a batch that the actor may see: the code that is written on the units and
-- the name of the site, and nothing of masses, contamination or people there.
create function app.second_life_ends(of_batch uuid) returns table (batch_id uuid, code text, site_name text)
  language sql stable security definer set search_path = public, pg_temp as $$
  select b.id, b.code, s.name
  from public.batch own
  join public.second_life_source l on l.network_id = own.network_id and l.voided_at is null
    and (l.batch_id = own.id or l.source_batch_id = own.id)
  join public.batch b on b.network_id = own.network_id and b.voided_at is null
    and b.id = case when l.batch_id = own.id then l.source_batch_id else l.batch_id end
  join public.site s on s.network_id = b.network_id and s.id = b.site_id
  where own.network_id = app.network_id() and own.id = of_batch
    and (app.member_role() = 'coordinator' or (app.member_role() = 'member' and own.site_id = any (app.site_ids())))
$$;
alter function app.second_life_ends(uuid) owner to pinset_definer;
revoke execute on function app.second_life_ends(uuid) from public;
grant execute on function app.second_life_ends(uuid) to pinset_app, pinset_definer;

-- Whether one batch comes from another through any number of lives, at whatever site: a chain must never close.
create function app.descends_from(later uuid, earlier uuid) returns boolean
  language sql stable security definer set search_path = public, pg_temp as $$
  with recursive line as (
    select l.source_batch_id as id from public.second_life_source l
      where l.network_id = app.network_id() and l.batch_id = later and l.voided_at is null
    union
    select l.source_batch_id from line join public.second_life_source l
      on l.network_id = app.network_id() and l.batch_id = line.id and l.voided_at is null
  )
  select exists (select 1 from line where id = earlier)
$$;
alter function app.descends_from(uuid, uuid) owner to pinset_definer;
revoke execute on function app.descends_from(uuid, uuid) from public;
grant execute on function app.descends_from(uuid, uuid) to pinset_app, pinset_definer;
