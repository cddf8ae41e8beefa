-- Reports in full: a baseline, chosen indicators, the coordinator's words, versions, stories with pictures, and links
-- for funders without an account. A published report never changes; a later one follows it.

alter table public.report
  -- The programme that the report is for, where it has a name of its own.
  add column "programme" TEXT,
  add column "baseline_from" DATE,
  add column "baseline_to" DATE,
  add column "indicators" TEXT[] NOT NULL DEFAULT array['harvest', 'residues', 'methods'],
  add column "words" JSONB NOT NULL DEFAULT '{}',
  add column "version" INTEGER NOT NULL DEFAULT 1,
  add column "follows_id" UUID;
alter table public.report
  add constraint report_baseline check ((baseline_from is null) = (baseline_to is null) and (baseline_to is null or baseline_to >= baseline_from)),
  add constraint report_version check (version >= 1 and (version = 1) = (follows_id is null)),
  add constraint "report_network_id_follows_id_fkey" foreign key ("network_id", "follows_id") references public.report("network_id", "id") on delete restrict on update no action;
create index "report_network_id_follows_id_idx" on public.report("network_id", "follows_id");

create function app.keep_published_report() returns trigger language plpgsql as $$
begin
  if old.published_at is not null and (to_jsonb(new) - array['revision', 'voided_at', 'void_reason'])
      is distinct from (to_jsonb(old) - array['revision', 'voided_at', 'void_reason']) then
    raise exception 'a published report is fixed' using errcode = 'PB007';
  end if;
  return new;
end $$;
create trigger keep_published before update on public.report for each row execute function app.keep_published_report();

create table public.report_story (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "report_id" UUID NOT NULL,
    "title" TEXT NOT NULL,
    "words" TEXT NOT NULL,
    "picture_alt" TEXT,
    "picture_width_px" INTEGER,
    "picture_height_px" INTEGER,
    -- The day on which those told of or seen agreed to this being published.
    "consent_on" DATE NOT NULL,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "report_story_pkey" PRIMARY KEY ("network_id","id")
);
create index "report_story_network_id_report_id_idx" on public.report_story("network_id", "report_id");
alter table public.report_story add constraint "report_story_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.report_story add constraint "report_story_network_id_report_id_fkey" foreign key ("network_id", "report_id") references public.report("network_id", "id") on delete restrict on update no action;
alter table public.report_story
  add constraint report_story_picture check ((picture_width_px is null) = (picture_height_px is null) and (picture_width_px is null) = (picture_alt is null)),
  add constraint report_story_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

create table public.report_picture (
    "network_id" UUID NOT NULL,
    -- The story's id.
    "id" UUID NOT NULL,
    "image" BYTEA NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "report_picture_pkey" PRIMARY KEY ("network_id","id")
);
alter table public.report_picture add constraint "report_picture_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.report_picture add constraint "report_picture_network_id_id_fkey" foreign key ("network_id", "id") references public.report_story("network_id", "id") on delete restrict on update no action;
alter table public.report_picture alter column image set storage external;

create table public.report_link (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "report_id" UUID NOT NULL,
    "token_hash" TEXT NOT NULL,
    "for_whom" TEXT NOT NULL,
    "language" public.language NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "report_link_pkey" PRIMARY KEY ("network_id","id")
);
create unique index "report_link_token_hash_key" on public.report_link("token_hash");
create index "report_link_network_id_report_id_idx" on public.report_link("network_id", "report_id");
alter table public.report_link add constraint "report_link_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.report_link add constraint "report_link_network_id_report_id_fkey" foreign key ("network_id", "report_id") references public.report("network_id", "id") on delete restrict on update no action;
alter table public.report_link
  add constraint report_link_expiry check (expires_at > created_at and expires_at <= created_at + interval '400 days'),
  add constraint report_link_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

-- Each opening by a link; what a visitor is called or where they come from is not kept.
create table public.report_link_visit (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "link_id" UUID NOT NULL,
    "form" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "report_link_visit_pkey" PRIMARY KEY ("network_id","id")
);
create index "report_link_visit_network_id_link_id_idx" on public.report_link_visit("network_id", "link_id");
alter table public.report_link_visit add constraint "report_link_visit_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.report_link_visit add constraint "report_link_visit_network_id_link_id_fkey" foreign key ("network_id", "link_id") references public.report_link("network_id", "id") on delete restrict on update no action;
alter table public.report_link_visit add constraint report_link_visit_form check (form in ('page', 'pdf', 'xlsx', 'package'));

-- Stories, like the words, are fixed with their report; taking one out stays possible, since a consent can be withdrawn.
create function app.keep_published_story() returns trigger language plpgsql as $$
begin
  if exists (select 1 from public.report r where r.network_id = new.network_id and r.id = new.report_id and r.published_at is not null)
      and (tg_op = 'INSERT' or (to_jsonb(new) - array['revision', 'voided_at', 'void_reason'])
        is distinct from (to_jsonb(old) - array['revision', 'voided_at', 'void_reason'])) then
    raise exception 'a published report is fixed' using errcode = 'PB007';
  end if;
  return new;
end $$;
create trigger keep_published before insert or update on public.report_story for each row execute function app.keep_published_story();

create function app.write_report_picture_history() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
begin
  insert into public.history (network_id, person_id, table_name, record_id, action, new_values, origin)
  values (new.network_id, app.person_id(), 'report_picture', new.id, 'created'::public.history_action,
    jsonb_build_object('image_sha256', encode(sha256(new.image), 'hex'), 'bytes', octet_length(new.image)),
    nullif(current_setting('app.origin', true), ''));
  return null;
end $$;
-- A token's hash is a secret even in history.
create function app.write_report_link_history() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
begin
  insert into public.history (network_id, person_id, table_name, record_id, action, new_values, reason)
  values (new.network_id, app.person_id(), 'report_link', new.id,
    (case tg_op when 'INSERT' then 'created' else 'changed' end)::public.history_action,
    jsonb_strip_nulls(to_jsonb(new) - 'token_hash'), nullif(current_setting('app.reason', true), ''));
  return null;
end $$;

create trigger keep_identity before update on public.report_story for each row execute function app.keep_identity();
create trigger write_history after insert or update on public.report_story for each row execute function app.write_history();
create trigger write_history after insert on public.report_picture for each row execute function app.write_report_picture_history();
create trigger keep_identity before update on public.report_link for each row execute function app.keep_identity();
create trigger write_history after insert or update on public.report_link for each row execute function app.write_report_link_history();

grant select, insert, update on public.report_story, public.report_link to pinset_app;
grant select, insert on public.report_picture to pinset_app;
grant select on public.report_link_visit to pinset_app;
grant select, insert, update on public.report_story, public.report_link to pinset_definer;
grant select, insert on public.report_picture, public.report_link_visit to pinset_definer;

do $$
declare t text;
begin
  foreach t in array array['report_story', 'report_picture', 'report_link', 'report_link_visit'] loop
    execute format('alter table public.%I enable row level security', t);
    execute format('alter table public.%I force row level security', t);
    execute format($p$create policy coordinator_all on public.%I for all to pinset_app
      using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
      with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')$p$, t);
  end loop;
end $$;
-- Whoever may read a report may read its stories: the report's own policy decides.
create policy published_story on public.report_story for select to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) in ('funder', 'member') and voided_at is null
    and exists (select 1 from public.report r where r.network_id = report_story.network_id and r.id = report_story.report_id));
create policy published_picture on public.report_picture for select to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) in ('funder', 'member')
    and exists (select 1 from public.report_story s where s.network_id = report_picture.network_id and s.id = report_picture.id));

-- What a link opens: one published report, and a line in the log of its visits. Nothing else answers to a link.
create function app.report_link_report(wanted_token_hash text)
  returns table (network_id uuid, link_id uuid, report_id uuid, language public.language, time_zone text, region text, expires_at timestamptz)
  language sql stable security definer set search_path = public, pg_temp as $$
  select l.network_id, l.id, l.report_id, l.language, n.time_zone, n.region, l.expires_at
  from public.report_link l join public.report r on r.network_id = l.network_id and r.id = l.report_id
  join public.network n on n.id = l.network_id
  where l.token_hash = wanted_token_hash and l.voided_at is null and l.expires_at > now()
    and r.published_at is not null and r.voided_at is null limit 1
$$;
create function app.open_report_link(wanted_token_hash text, opened_form text)
  returns table (language public.language, time_zone text, region text, expires_at timestamptz, report jsonb, stories jsonb)
  language plpgsql security definer set search_path = public, pg_temp as $$
#variable_conflict use_column
declare l record;
begin
  select * into l from app.report_link_report(wanted_token_hash);
  if not found then
    return;
  end if;
  insert into public.report_link_visit (network_id, link_id, form) values (l.network_id, l.link_id, opened_form);
  return query select l.language, l.time_zone, l.region, l.expires_at,
    jsonb_build_object('id', r.id, 'title', r.title, 'content', r.content, 'words', r.words, 'version', r.version,
      'publishedAt', r.published_at),
    coalesce((select jsonb_agg(jsonb_build_object('id', s.id, 'title', s.title, 'words', s.words, 'pictureAlt', s.picture_alt,
        'pictureWidthPx', s.picture_width_px, 'pictureHeightPx', s.picture_height_px) order by s.id)
      from public.report_story s where s.network_id = r.network_id and s.report_id = r.id and s.voided_at is null), '[]')
    from public.report r where r.network_id = l.network_id and r.id = l.report_id;
end $$;
create function app.report_link_picture(wanted_token_hash text, wanted_story uuid) returns bytea
  language sql stable security definer set search_path = public, pg_temp as $$
  select p.image from app.report_link_report(wanted_token_hash) l
  join public.report_story s on s.network_id = l.network_id and s.report_id = l.report_id and s.id = wanted_story and s.voided_at is null
  join public.report_picture p on p.network_id = s.network_id and p.id = s.id
$$;

do $$
declare f regprocedure;
begin
  for f in select p.oid::regprocedure from pg_proc p join pg_namespace n on n.oid = p.pronamespace
    where n.nspname = 'app' and p.proname in ('write_report_picture_history', 'write_report_link_history',
      'report_link_report', 'open_report_link', 'report_link_picture')
  loop
    execute format('alter function %s owner to pinset_definer', f);
    execute format('revoke execute on function %s from public', f);
  end loop;
end $$;
grant execute on function app.open_report_link(text, text), app.report_link_picture(text, uuid) to pinset_app;
