-- Tokens with which a script or a sensor acts as the person who made them, narrowed to reading or to some sites, and what was
-- answered to each of their writes.

create table public.api_token (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "person_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "prefix" TEXT NOT NULL,
    "secret_hash" TEXT NOT NULL,
    "may_write" BOOLEAN NOT NULL,
    "every_site" BOOLEAN NOT NULL,
    "site_ids" UUID[] NOT NULL DEFAULT '{}',
    "expires_at" TIMESTAMPTZ(3),
    "last_used_on" DATE,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "api_token_pkey" PRIMARY KEY ("network_id","id")
);
alter table public.api_token add constraint "api_token_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.api_token add constraint "api_token_person_id_fkey" foreign key ("person_id") references public.person("id") on delete restrict on update no action;
create unique index "api_token_secret_hash_key" on public.api_token("secret_hash");
create index "api_token_network_id_person_id_idx" on public.api_token("network_id", "person_id");
alter table public.api_token
  add constraint api_token_hash check (secret_hash ~ '^[0-9a-f]{64}$'),
  add constraint api_token_name check (length(trim(name)) between 1 and 80),
  add constraint api_token_sites check (every_site = (cardinality(site_ids) = 0)),
  add constraint api_token_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

-- What a token may do never changes: it can only be withdrawn. Its hash is compared by the look-up and read by nobody.
grant select ("network_id", "id", "person_id", "name", "prefix", "may_write", "every_site", "site_ids", "expires_at", "last_used_on",
  "origin", "created_at", "created_by_id", "revision", "voided_at", "void_reason") on public.api_token to pinset_app;
grant insert, update ("voided_at", "void_reason") on public.api_token to pinset_app;
grant select, insert, update on public.api_token to pinset_definer;

create function app.write_api_token_history() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
begin
  insert into public.history (network_id, person_id, table_name, record_id, action, new_values, reason, origin)
  values (new.network_id, app.person_id(), 'api_token', new.id,
    (case tg_op when 'INSERT' then 'created' else 'changed' end)::public.history_action,
    jsonb_strip_nulls(to_jsonb(new) - 'secret_hash' - 'last_used_on'), nullif(current_setting('app.reason', true), ''),
    nullif(current_setting('app.origin', true), ''));
  return null;
end $$;
alter function app.write_api_token_history() owner to pinset_definer;

-- The day of last use is no change of a token: it raises no revision and leaves no line of history.
create trigger keep_identity before update of network_id, id, created_at, voided_at, void_reason on public.api_token
  for each row execute function app.keep_identity();
create trigger write_history after insert or update of voided_at, void_reason on public.api_token
  for each row execute function app.write_api_token_history();

alter table public.api_token enable row level security;
alter table public.api_token force row level security;
create policy own_token on public.api_token for all to pinset_app
  using (network_id = (select app.network_id()) and person_id = (select app.person_id())
    and (select app.member_role()) in ('coordinator', 'member'))
  with check (network_id = (select app.network_id()) and person_id = (select app.person_id())
    and (select app.member_role()) in ('coordinator', 'member'));
create policy network_token on public.api_token for select to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator');
create policy withdraw_network_token on public.api_token for update to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
  with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator');

-- What a write of a token was answered, written in the transaction of the write: the same key sent again has its first answer
-- and no second effect. Never changed or removed.
create table public.api_receipt (
    "network_id" UUID NOT NULL,
    "token_id" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "person_id" UUID NOT NULL,
    "request_hash" TEXT NOT NULL,
    "status" INTEGER NOT NULL,
    "answer" JSONB NOT NULL,
    "saved_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "api_receipt_pkey" PRIMARY KEY ("network_id","token_id","key")
);
alter table public.api_receipt add constraint "api_receipt_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.api_receipt add constraint "api_receipt_person_id_fkey" foreign key ("person_id") references public.person("id") on delete restrict on update no action;
alter table public.api_receipt add constraint "api_receipt_network_id_token_id_fkey" foreign key ("network_id", "token_id") references public.api_token("network_id", "id") on delete restrict on update no action;
alter table public.api_receipt
  add constraint api_receipt_hash check (request_hash ~ '^[0-9a-f]{64}$'),
  add constraint api_receipt_key check (length(key) between 1 and 255);

grant select, insert on public.api_receipt to pinset_app;
grant select on public.api_receipt to pinset_definer;
alter table public.api_receipt enable row level security;
alter table public.api_receipt force row level security;
create policy own_api_receipt on public.api_receipt for all to pinset_app
  using (network_id = (select app.network_id()) and person_id = (select app.person_id())
    and (select app.member_role()) in ('coordinator', 'member'))
  with check (network_id = (select app.network_id()) and person_id = (select app.person_id())
    and (select app.member_role()) in ('coordinator', 'member'));

-- The sites to which the asker's token is narrowed; null for everybody who asks without such a token. It can only take away:
-- whoever has the run of the network counts as a member of those sites, and a member keeps those that are theirs.
create function app.site_scope() returns uuid[] language sql stable as
  $$ select nullif(current_setting('app.site_scope', true), '')::uuid[] $$;

create or replace function app.member_role() returns public.membership_role
  language sql stable security definer set search_path = public, pg_temp as $$
  select case when m.role = 'coordinator' and app.site_scope() is not null then 'member' else m.role end
  from public.membership m join public.person p on p.id = m.person_id
  where m.network_id = app.network_id() and m.person_id = app.person_id()
    and m.ended_at is null and m.voided_at is null and p.disabled_at is null
$$;
create or replace function app.site_ids() returns uuid[]
  language sql stable security definer set search_path = public, pg_temp as $$
  select coalesce(array_agg(s.site_id), '{}') from public.membership m
  join public.person p on p.id = m.person_id
  cross join lateral (
    select ms.site_id from public.membership_site ms
    where m.role = 'member' and ms.network_id = m.network_id and ms.membership_id = m.id and ms.ended_at is null
    union all
    select w.id from public.site w
    where m.role = 'coordinator' and w.network_id = m.network_id and w.id = any (app.site_scope())) s
  where m.network_id = app.network_id() and m.person_id = app.person_id()
    and m.ended_at is null and m.voided_at is null and p.disabled_at is null
    and (app.site_scope() is null or s.site_id = any (app.site_scope()))
$$;

-- Whose a token is, asked before there is an actor: nothing for one that is withdrawn, expired, or of somebody who has left the
-- network, may not sign in any more, or reads reports only.
create function app.token_lookup(wanted_hash text)
  returns table (token_id uuid, token_name text, may_write boolean, every_site boolean, token_site_ids uuid[], last_used_on date,
    person_id uuid, person_name text, language public.language, region text,
    mass_unit public.mass_unit, temperature_unit public.temperature_unit, volume_unit public.volume_unit,
    network_id uuid, network_name text, network_time_zone text,
    membership_id uuid, member_role public.membership_role, site_ids uuid[])
  language sql stable security definer set search_path = public, pg_temp as $$
  select t.id, t.name, t.may_write, t.every_site, t.site_ids, t.last_used_on,
    p.id, c.name, p.language, p.region, p.mass_unit, p.temperature_unit, p.volume_unit,
    n.id, n.name, n.time_zone, m.id, m.role,
    coalesce((select array_agg(ms.site_id) from public.membership_site ms
      where ms.network_id = m.network_id and ms.membership_id = m.id and ms.ended_at is null), '{}')
  from public.api_token t
  join public.person p on p.id = t.person_id and p.disabled_at is null
  join public.membership m on m.network_id = t.network_id and m.person_id = t.person_id
    and m.ended_at is null and m.voided_at is null and m.role in ('coordinator', 'member')
  join public.network n on n.id = t.network_id
  left join public.person_contact c on c.person_id = p.id
  where t.secret_hash = wanted_hash and t.voided_at is null and (t.expires_at is null or t.expires_at > now())
  limit 1
$$;

-- Notes on which day a token was used last; the caller cannot name another day or a token that does not work.
create function app.note_token_use(used uuid) returns void
  language sql security definer set search_path = public, pg_temp as $$
  update public.api_token set last_used_on = (now() at time zone 'UTC')::date
  where id = used and voided_at is null and last_used_on is distinct from (now() at time zone 'UTC')::date
$$;

alter function app.token_lookup(text) owner to pinset_definer;
alter function app.note_token_use(uuid) owner to pinset_definer;
revoke execute on function app.token_lookup(text), app.note_token_use(uuid) from public;
grant execute on function app.token_lookup(text), app.note_token_use(uuid) to pinset_app, pinset_definer;
revoke execute on function app.write_api_token_history() from public;
