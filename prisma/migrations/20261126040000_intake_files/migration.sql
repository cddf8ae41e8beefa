-- Tables of records that somebody kept elsewhere and brings in. The file as it came is kept (intake_content), and so is
-- the text of each of its rows (intake_row) beside what was mended; the records made from them say so by their origin.

create type public.intake_state as enum ('uploaded', 'checking', 'checked', 'adding', 'added');
create type public.intake_row_state as enum ('unread', 'new', 'there', 'needs', 'added', 'left_out');

create table public.intake_file (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "site_id" UUID,
    "kind" TEXT NOT NULL,
    "file_name" TEXT NOT NULL,
    "byte_count" INTEGER NOT NULL,
    "sha256" TEXT NOT NULL,
    "layout" JSONB NOT NULL,
    "choices" JSONB NOT NULL DEFAULT '{}',
    "confirmed" TEXT[] NOT NULL DEFAULT '{}',
    "state" public.intake_state NOT NULL DEFAULT 'uploaded',
    "row_count" INTEGER NOT NULL DEFAULT 0,
    "done_count" INTEGER NOT NULL DEFAULT 0,
    "total_count" INTEGER NOT NULL DEFAULT 0,
    "heartbeat_at" TIMESTAMPTZ(3),
    "stop_asked_at" TIMESTAMPTZ(3),
    "trouble" TEXT,
    "added_at" TIMESTAMPTZ(3),
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID NOT NULL,

    CONSTRAINT "intake_file_pkey" PRIMARY KEY ("network_id","id")
);
create index "intake_file_network_id_site_id_kind_idx" on public.intake_file("network_id", "site_id", "kind");
alter table public.intake_file add constraint "intake_file_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.intake_file add constraint "intake_file_network_id_site_id_fkey" foreign key ("network_id", "site_id") references public.site("network_id", "id") on delete restrict on update no action;
alter table public.intake_file
  add constraint intake_file_counts check (row_count >= 0 and done_count >= 0 and total_count >= 0 and byte_count > 0);

create table public.intake_content (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "content" BYTEA NOT NULL,

    CONSTRAINT "intake_content_pkey" PRIMARY KEY ("network_id","id")
);
alter table public.intake_content alter column content set storage external;
alter table public.intake_content add constraint "intake_content_network_id_id_fkey" foreign key ("network_id", "id") references public.intake_file("network_id", "id") on delete restrict on update no action;

create table public.intake_row (
    "network_id" UUID NOT NULL,
    "file_id" UUID NOT NULL,
    "line" INTEGER NOT NULL,
    "cells" TEXT[] NOT NULL,
    "mended" JSONB,
    "confirmed" TEXT[] NOT NULL DEFAULT '{}',
    "state" public.intake_row_state NOT NULL DEFAULT 'unread',
    "problems" JSONB NOT NULL DEFAULT '[]',
    "record_ids" UUID[] NOT NULL DEFAULT '{}',

    CONSTRAINT "intake_row_pkey" PRIMARY KEY ("network_id","file_id","line")
);
create index "intake_row_network_id_file_id_state_line_idx" on public.intake_row("network_id", "file_id", "state", "line");
alter table public.intake_row add constraint "intake_row_network_id_file_id_fkey" foreign key ("network_id", "file_id") references public.intake_file("network_id", "id") on delete restrict on update no action;

grant select, insert on public.intake_file, public.intake_content, public.intake_row to pinset_app;
grant update (site_id, kind, layout, choices, confirmed, state, row_count, done_count, total_count, heartbeat_at, stop_asked_at, trouble, added_at)
  on public.intake_file to pinset_app;
grant update (cells, mended, confirmed, state, problems, record_ids) on public.intake_row to pinset_app;

-- What a person decided has a history; how far the work has come has none, and the records added have their own.
create trigger write_history after insert or update of site_id, kind, layout, choices, confirmed, state
  on public.intake_file for each row execute function app.write_history();
grant select on public.intake_file to pinset_definer;

do $$
declare t text;
begin
  foreach t in array array['intake_file', 'intake_content', 'intake_row'] loop
    execute format('alter table public.%I enable row level security', t);
    execute format('alter table public.%I force row level security', t);
    execute format($p$create policy coordinator_all on public.%I for all to pinset_app
      using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
      with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')$p$, t);
  end loop;
end $$;

-- A member sees the files of their own sites and those they brought themselves.
create policy member_own on public.intake_file for all to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'member'
    and (created_by_id = (select app.person_id()) or site_id = any ((select app.site_ids())::uuid[])))
  with check (network_id = (select app.network_id()) and (select app.member_role()) = 'member'
    and (site_id is null or site_id = any ((select app.site_ids())::uuid[])));
create policy member_own on public.intake_content for all to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'member'
    and exists (select 1 from public.intake_file f where f.network_id = intake_content.network_id and f.id = intake_content.id))
  with check (network_id = (select app.network_id()) and (select app.member_role()) = 'member'
    and exists (select 1 from public.intake_file f where f.network_id = intake_content.network_id and f.id = intake_content.id));
create policy member_own on public.intake_row for all to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'member'
    and exists (select 1 from public.intake_file f where f.network_id = intake_row.network_id and f.id = intake_row.file_id))
  with check (network_id = (select app.network_id()) and (select app.member_role()) = 'member'
    and exists (select 1 from public.intake_file f where f.network_id = intake_row.network_id and f.id = intake_row.file_id));
