-- A consent can be withdrawn after a report was published: the picture, or the whole story, leaves every version that
-- shows it, and the report says so. Everything else of a published report stays fixed.

alter table public.report_story
  -- The story that this one is a copy of, in an earlier version: a consent is withdrawn from all of them at once.
  add column "first_id" UUID,
  add column "consent_withdrawn_on" DATE,
  add column "withdrawn_part" TEXT;
alter table public.report_story
  add constraint report_story_withdrawn check (
    (consent_withdrawn_on is null) = (withdrawn_part is null) and withdrawn_part in ('picture', 'story')
    and (withdrawn_part is distinct from 'story' or (title = '' and words = ''))),
  add constraint "report_story_network_id_first_id_fkey" foreign key ("network_id", "first_id") references public.report_story("network_id", "id") on delete restrict on update no action;
create index "report_story_network_id_first_id_idx" on public.report_story("network_id", "first_id");

create or replace function app.keep_published_story() returns trigger language plpgsql as $$
declare may_change text[] := array['revision', 'voided_at', 'void_reason', 'consent_withdrawn_on', 'withdrawn_part'];
begin
  -- A withdrawn story loses its words; nothing else may be written over them.
  if new.withdrawn_part = 'story' then
    may_change := may_change || array['title', 'words', 'picture_alt', 'picture_width_px', 'picture_height_px'];
  elsif new.withdrawn_part = 'picture' then
    may_change := may_change || array['picture_alt', 'picture_width_px', 'picture_height_px'];
  end if;
  if exists (select 1 from public.report r where r.network_id = new.network_id and r.id = new.report_id and r.published_at is not null)
      and (tg_op = 'INSERT' or (to_jsonb(new) - may_change) is distinct from (to_jsonb(old) - may_change)) then
    raise exception 'a published report is fixed' using errcode = 'PB007';
  end if;
  if tg_op = 'UPDATE' and old.consent_withdrawn_on is not null and new.consent_withdrawn_on is null then
    raise exception 'a withdrawn consent is not given again: the story is told anew' using errcode = 'PB007';
  end if;
  if new.withdrawn_part is not null and new.picture_alt is not null then
    raise exception 'a withdrawn picture is not shown' using errcode = 'PB007';
  end if;
  return new;
end $$;

-- The bytes of a withdrawn picture are erased; no other change of a picture is possible.
create function app.erase_picture_only() returns trigger language plpgsql as $$
begin
  if octet_length(new.image) <> 0 or (to_jsonb(new) - 'image') is distinct from (to_jsonb(old) - 'image') then
    raise exception 'a picture of a report can only be erased' using errcode = 'PB007';
  end if;
  return new;
end $$;
create trigger erase_only before update on public.report_picture for each row execute function app.erase_picture_only();
create or replace function app.write_report_picture_history() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
begin
  insert into public.history (network_id, person_id, table_name, record_id, action, new_values, reason, origin)
  values (new.network_id, app.person_id(), 'report_picture', new.id,
    (case tg_op when 'INSERT' then 'created' else 'changed' end)::public.history_action,
    jsonb_build_object('image_sha256', encode(sha256(new.image), 'hex'), 'bytes', octet_length(new.image)),
    nullif(current_setting('app.reason', true), ''), nullif(current_setting('app.origin', true), ''));
  return null;
end $$;
drop trigger write_history on public.report_picture;
create trigger write_history after insert or update on public.report_picture for each row execute function app.write_report_picture_history();
grant update (image) on public.report_picture to pinset_app;

-- The first look at a link's address, which is not a visit: whether it opens anything.
create function app.report_link_is_open(wanted_token_hash text) returns boolean
  language sql stable security definer set search_path = public, pg_temp as $$
  select exists (select 1 from app.report_link_report(wanted_token_hash))
$$;
create or replace function app.open_report_link(wanted_token_hash text, opened_form text)
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
      'publishedAt', r.published_at, 'networkName', n.name, 'networkCode', n.code),
    coalesce((select jsonb_agg(jsonb_build_object('id', s.id, 'title', s.title, 'words', s.words, 'pictureAlt', s.picture_alt,
        'pictureWidthPx', s.picture_width_px, 'pictureHeightPx', s.picture_height_px,
        'consentWithdrawnOn', s.consent_withdrawn_on, 'withdrawnPart', s.withdrawn_part) order by s.id)
      from public.report_story s where s.network_id = r.network_id and s.report_id = r.id and s.voided_at is null), '[]')
    from public.report r join public.network n on n.id = r.network_id
    where r.network_id = l.network_id and r.id = l.report_id;
end $$;
create or replace function app.report_link_picture(wanted_token_hash text, wanted_story uuid) returns bytea
  language sql stable security definer set search_path = public, pg_temp as $$
  select p.image from app.report_link_report(wanted_token_hash) l
  join public.report_story s on s.network_id = l.network_id and s.report_id = l.report_id and s.id = wanted_story and s.voided_at is null
    and s.picture_alt is not null
  join public.report_picture p on p.network_id = s.network_id and p.id = s.id
$$;

alter function app.report_link_is_open(text) owner to pinset_definer;
revoke execute on function app.report_link_is_open(text) from public;
grant execute on function app.report_link_is_open(text) to pinset_app;
