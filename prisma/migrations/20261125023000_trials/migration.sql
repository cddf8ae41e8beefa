-- Planned comparisons across sites. The plan, its arms, its sites and the drawn list cannot change once the trial has
-- started; what was published of it cannot change at all. What has to be said later is a dated note.

create type public.trial_outcome as enum ('contamination', 'yield');

create table public.trial (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "title" TEXT NOT NULL,
    "question" TEXT NOT NULL,
    "outcome" public.trial_outcome NOT NULL,
    "species_id" UUID NOT NULL,
    "container_kind" public.container_kind NOT NULL,
    "units_per_run" INTEGER NOT NULL,
    "expected_percent" DECIMAL(6,2) NOT NULL,
    "difference_points" DECIMAL(6,2) NOT NULL,
    "likeness" DECIMAL(4,3),
    "run_spread_points" DECIMAL(6,2),
    "power_percent" INTEGER NOT NULL,
    "blocks" INTEGER,
    "starts_on" DATE NOT NULL,
    "days_between_blocks" INTEGER NOT NULL,
    "late_after_days" INTEGER NOT NULL,
    "seed" TEXT,
    "started_at" TIMESTAMPTZ(3),
    "ended_at" TIMESTAMPTZ(3),
    "end_note" TEXT,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "trial_pkey" PRIMARY KEY ("network_id","id")
);
alter table public.trial add constraint "trial_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.trial add constraint "trial_network_id_species_id_fkey" foreign key ("network_id", "species_id") references public.species("network_id", "id") on delete restrict on update no action;
alter table public.trial
  add constraint trial_numbers check (units_per_run between 1 and 1000 and expected_percent > 0 and difference_points <> 0
    and power_percent between 50 and 99 and blocks between 1 and 50 and days_between_blocks between 0 and 365
    and late_after_days between 0 and 365),
  add constraint trial_spread check ((outcome = 'contamination' and likeness between 0 and 1 and run_spread_points is null)
    or (outcome = 'yield' and run_spread_points > 0 and likeness is null)),
  add constraint trial_started check ((started_at is null) = (seed is null) and (started_at is null or blocks is not null)
    and (ended_at is null or started_at is not null)),
  add constraint trial_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

create table public.trial_arm (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "trial_id" UUID NOT NULL,
    "place" INTEGER NOT NULL,
    "label" TEXT NOT NULL,
    "method_id" UUID,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "trial_arm_pkey" PRIMARY KEY ("network_id","id")
);
create unique index "trial_arm_network_id_trial_id_id_key" on public.trial_arm("network_id", "trial_id", "id");
create unique index trial_arm_place on public.trial_arm ("network_id", "trial_id", "place") where voided_at is null;
alter table public.trial_arm add constraint "trial_arm_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.trial_arm add constraint "trial_arm_network_id_trial_id_fkey" foreign key ("network_id", "trial_id") references public.trial("network_id", "id") on delete restrict on update no action;
alter table public.trial_arm add constraint "trial_arm_network_id_method_id_fkey" foreign key ("network_id", "method_id") references public.method("network_id", "id") on delete restrict on update no action;

create table public.trial_site (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "trial_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "trial_site_pkey" PRIMARY KEY ("network_id","id")
);
create unique index trial_site_once on public.trial_site ("network_id", "trial_id", "site_id") where voided_at is null;
alter table public.trial_site add constraint "trial_site_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.trial_site add constraint "trial_site_network_id_trial_id_fkey" foreign key ("network_id", "trial_id") references public.trial("network_id", "id") on delete restrict on update no action;
alter table public.trial_site add constraint "trial_site_network_id_site_id_fkey" foreign key ("network_id", "site_id") references public.site("network_id", "id") on delete restrict on update no action;

create table public.trial_slot (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "trial_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "arm_id" UUID NOT NULL,
    "block" INTEGER NOT NULL,
    "place" INTEGER NOT NULL,
    "planned_on" DATE NOT NULL,
    "batch_id" UUID,
    "assigned_at" TIMESTAMPTZ(3),
    "departure" TEXT,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "trial_slot_pkey" PRIMARY KEY ("network_id","id")
);
create unique index "trial_slot_network_id_trial_id_site_id_place_key" on public.trial_slot("network_id", "trial_id", "site_id", "place");
create unique index trial_slot_batch_once on public.trial_slot ("network_id", "batch_id") where batch_id is not null;
create index "trial_slot_network_id_site_id_batch_id_idx" on public.trial_slot("network_id", "site_id", "batch_id");
alter table public.trial_slot add constraint "trial_slot_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.trial_slot add constraint "trial_slot_network_id_trial_id_fkey" foreign key ("network_id", "trial_id") references public.trial("network_id", "id") on delete restrict on update no action;
alter table public.trial_slot add constraint "trial_slot_network_id_trial_id_arm_id_fkey" foreign key ("network_id", "trial_id", "arm_id") references public.trial_arm("network_id", "trial_id", "id") on delete restrict on update no action;
alter table public.trial_slot add constraint "trial_slot_network_id_site_id_fkey" foreign key ("network_id", "site_id") references public.site("network_id", "id") on delete restrict on update no action;
alter table public.trial_slot add constraint "trial_slot_network_id_site_id_batch_id_fkey" foreign key ("network_id", "site_id", "batch_id") references public.batch("network_id", "site_id", "id") on delete restrict on update no action;
alter table public.trial_slot add constraint trial_slot_assigned check ((batch_id is null) = (assigned_at is null));

create table public.trial_note (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "trial_id" UUID NOT NULL,
    "noted_at" TIMESTAMPTZ(3) NOT NULL,
    "note" TEXT NOT NULL,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,

    CONSTRAINT "trial_note_pkey" PRIMARY KEY ("network_id","id")
);
create index "trial_note_network_id_trial_id_idx" on public.trial_note("network_id", "trial_id");
alter table public.trial_note add constraint "trial_note_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.trial_note add constraint "trial_note_network_id_trial_id_fkey" foreign key ("network_id", "trial_id") references public.trial("network_id", "id") on delete restrict on update no action;
alter table public.trial_note add constraint trial_note_said check (length(trim(note)) > 0);

create table public.trial_result (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "trial_id" UUID NOT NULL,
    "title" TEXT NOT NULL,
    "content" JSONB NOT NULL,
    "published_at" TIMESTAMPTZ(3) NOT NULL,
    "shown_to_funders_at" TIMESTAMPTZ(3),
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "trial_result_pkey" PRIMARY KEY ("network_id","id")
);
create unique index "trial_result_network_id_trial_id_key" on public.trial_result("network_id", "trial_id");
alter table public.trial_result add constraint "trial_result_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.trial_result add constraint "trial_result_network_id_trial_id_fkey" foreign key ("network_id", "trial_id") references public.trial("network_id", "id") on delete restrict on update no action;

-- After the start only the end of the trial can still be written, once.
create function app.keep_trial_plan() returns trigger language plpgsql as $$
declare
  may_change text[] := array['ended_at', 'end_note', 'revision'];
begin
  if old.started_at is not null and ((to_jsonb(new) - may_change) is distinct from (to_jsonb(old) - may_change)
      or (old.ended_at is not null and (new.ended_at, new.end_note) is distinct from (old.ended_at, old.end_note))) then
    raise exception 'the plan of a started trial cannot change' using errcode = 'PB005';
  end if;
  return new;
end $$;

create function app.keep_trial_parts() returns trigger language plpgsql as $$
begin
  if exists (select 1 from public.trial t where t.network_id = new.network_id and t.id = new.trial_id and t.started_at is not null) then
    raise exception 'the plan of a started trial cannot change' using errcode = 'PB005';
  end if;
  return new;
end $$;

-- A slot takes its batch and what departed from the plan; what was drawn for it stays.
create function app.keep_trial_slot() returns trigger language plpgsql as $$
declare
  may_change text[] := array['batch_id', 'assigned_at', 'departure', 'revision'];
begin
  if (to_jsonb(new) - may_change) is distinct from (to_jsonb(old) - may_change) then
    raise exception 'what was drawn for a trial cannot change' using errcode = 'PB005';
  end if;
  if exists (select 1 from public.trial t where t.network_id = new.network_id and t.id = new.trial_id and t.ended_at is not null) then
    raise exception 'a trial that has ended takes nothing more' using errcode = 'PB005';
  end if;
  return new;
end $$;

create function app.keep_trial_result() returns trigger language plpgsql as $$
declare
  may_change text[] := array['shown_to_funders_at', 'revision'];
begin
  if (to_jsonb(new) - may_change) is distinct from (to_jsonb(old) - may_change) then
    raise exception 'a published result cannot change' using errcode = 'PB005';
  end if;
  return new;
end $$;

grant select, insert, update on public.trial, public.trial_arm, public.trial_site, public.trial_slot, public.trial_result to pinset_app, pinset_definer;
grant select, insert on public.trial_note to pinset_app, pinset_definer;

do $$
declare t text;
begin
  foreach t in array array['trial', 'trial_arm', 'trial_site', 'trial_slot', 'trial_note', 'trial_result'] loop
    if t <> 'trial_note' then
      execute format('create trigger keep_identity before update on public.%I for each row execute function app.keep_identity()', t);
    end if;
    execute format('create trigger write_history after insert or update on public.%I for each row execute function app.write_history()', t);
    execute format('alter table public.%I enable row level security', t);
    execute format('alter table public.%I force row level security', t);
    execute format($p$create policy coordinator_all on public.%I for all to pinset_app
      using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
      with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')$p$, t);
  end loop;
end $$;
create trigger keep_trial_plan before update on public.trial for each row execute function app.keep_trial_plan();
create trigger keep_trial_parts before insert or update on public.trial_arm for each row execute function app.keep_trial_parts();
create trigger keep_trial_parts before insert or update on public.trial_site for each row execute function app.keep_trial_parts();
create trigger keep_trial_parts before insert on public.trial_slot for each row execute function app.keep_trial_parts();
create trigger keep_trial_slot before update on public.trial_slot for each row execute function app.keep_trial_slot();
create trigger keep_trial_result before update on public.trial_result for each row execute function app.keep_trial_result();

-- Members read the plan of a started trial, and of its list what is drawn for their own sites, which they fill.
create policy member_started on public.trial for select to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'member' and started_at is not null and voided_at is null);
create policy member_started on public.trial_arm for select to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'member'
    and exists (select 1 from public.trial t where t.network_id = trial_arm.network_id and t.id = trial_id));
create policy member_started on public.trial_note for select to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'member'
    and exists (select 1 from public.trial t where t.network_id = trial_note.network_id and t.id = trial_id));
create policy member_own_sites on public.trial_site for select to pinset_app
  using (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[])
    and exists (select 1 from public.trial t where t.network_id = trial_site.network_id and t.id = trial_id));
create policy member_own_sites on public.trial_slot for select to pinset_app
  using (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]));
create policy member_fills on public.trial_slot for update to pinset_app
  using (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]))
  with check (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]));
-- A result is there once it is published: for members at once, for funders when the coordinator says so.
create policy member_read on public.trial_result for select to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'member');
create policy funder_shown on public.trial_result for select to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'funder' and shown_to_funders_at is not null);
