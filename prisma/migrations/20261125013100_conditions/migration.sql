-- Places at a site, the temperature, humidity and carbon dioxide read there, and which batch stood where from when.

create type public.condition_measure as enum ('temperature', 'humidity', 'carbon_dioxide');

create table public.condition_place (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "site_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "note" TEXT,
    "table_layout" JSONB,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "condition_place_pkey" PRIMARY KEY ("network_id","id")
);
create unique index "condition_place_network_id_site_id_id_key" on public.condition_place("network_id", "site_id", "id");
create unique index condition_place_name_once on public.condition_place (network_id, site_id, lower(name)) where voided_at is null;
alter table public.condition_place add constraint "condition_place_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.condition_place add constraint "condition_place_network_id_site_id_fkey" foreign key ("network_id", "site_id") references public.site("network_id", "id") on delete restrict on update no action;
alter table public.condition_place
  add constraint condition_place_name check (length(trim(name)) between 1 and 80),
  add constraint condition_place_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

create table public.condition_import (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "place_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "readings_read" INTEGER NOT NULL,
    "readings_added" INTEGER NOT NULL,
    "first_at" TIMESTAMPTZ(3) NOT NULL,
    "last_at" TIMESTAMPTZ(3) NOT NULL,
    "table_layout" JSONB NOT NULL,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "condition_import_pkey" PRIMARY KEY ("network_id","id")
);
create index "condition_import_network_id_place_id_idx" on public.condition_import("network_id", "place_id");
alter table public.condition_import add constraint "condition_import_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.condition_import add constraint "condition_import_network_id_site_id_place_id_fkey" foreign key ("network_id", "site_id", "place_id") references public.condition_place("network_id", "site_id", "id") on delete restrict on update no action;
alter table public.condition_import
  add constraint condition_import_counts check (readings_added between 0 and readings_read),
  add constraint condition_import_span check (last_at >= first_at),
  add constraint condition_import_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

create table public.condition_reading (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "place_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "import_id" UUID,
    "read_at" TIMESTAMPTZ(3) NOT NULL,
    "measure" public.condition_measure NOT NULL,
    "value" DECIMAL(7,1) NOT NULL,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "condition_reading_pkey" PRIMARY KEY ("network_id","id")
);
create unique index condition_reading_once on public.condition_reading (network_id, place_id, measure, read_at) where voided_at is null;
create index "condition_reading_network_id_import_id_idx" on public.condition_reading("network_id", "import_id");
alter table public.condition_reading add constraint "condition_reading_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.condition_reading add constraint "condition_reading_network_id_site_id_place_id_fkey" foreign key ("network_id", "site_id", "place_id") references public.condition_place("network_id", "site_id", "id") on delete restrict on update no action;
alter table public.condition_reading add constraint "condition_reading_network_id_import_id_fkey" foreign key ("network_id", "import_id") references public.condition_import("network_id", "id") on delete restrict on update no action;
alter table public.condition_reading
  add constraint condition_reading_value check (case measure when 'temperature' then value between -60 and 100
    when 'humidity' then value between 0 and 100 else value between 0 and 100000 end),
  add constraint condition_reading_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

create table public.placement (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "batch_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "place_id" UUID NOT NULL,
    "placed_on" DATE NOT NULL,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "placement_pkey" PRIMARY KEY ("network_id","id")
);
create index "placement_network_id_batch_id_idx" on public.placement("network_id", "batch_id");
create index "placement_network_id_place_id_idx" on public.placement("network_id", "place_id");
-- One place a day: a second one on the same day takes the first one's stead.
create unique index placement_once_a_day on public.placement (network_id, batch_id, placed_on) where voided_at is null;
alter table public.placement add constraint "placement_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.placement add constraint "placement_network_id_site_id_batch_id_fkey" foreign key ("network_id", "site_id", "batch_id") references public.batch("network_id", "site_id", "id") on delete restrict on update cascade;
-- Without the site: a batch that is corrected to another site keeps its past places, which then count no more.
alter table public.placement add constraint "placement_network_id_place_id_fkey" foreign key ("network_id", "place_id") references public.condition_place("network_id", "id") on delete restrict on update no action;
alter table public.placement add constraint placement_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

grant select, insert, update on public.condition_place, public.condition_import, public.placement to pinset_app, pinset_definer;
-- What a logger or a person read is never rewritten, only voided.
grant select, insert on public.condition_reading to pinset_app, pinset_definer;
grant update (voided_at, void_reason) on public.condition_reading to pinset_app, pinset_definer;

do $$
declare t text;
begin
  foreach t in array array['condition_place', 'condition_import', 'condition_reading', 'placement'] loop
    execute format('alter table public.%I enable row level security', t);
    execute format('alter table public.%I force row level security', t);
    execute format($p$create policy coordinator_all on public.%I for all to pinset_app
      using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
      with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')$p$, t);
    execute format($p$create policy member_own_sites on public.%I for all to pinset_app
      using (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]))
      with check (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]))$p$, t);
    execute format('create trigger keep_identity before update on public.%I for each row execute function app.keep_identity()', t);
  end loop;
end $$;
create trigger write_history after insert or update on public.condition_place for each row execute function app.write_history();
create trigger write_history after insert or update on public.condition_import for each row execute function app.write_history();
create trigger write_history after insert or update on public.placement for each row execute function app.write_history();
-- A logger writes thousands of rows a month. Those of an import stand and fall with it, and its row has the history.
create trigger write_history after insert or update on public.condition_reading for each row
  when (new.import_id is null) execute function app.write_history();
