-- What a site lets other members of its network and the funder see of it. Said by the site alone.

create type public.sharing_level as enum ('named', 'anonymous', 'not_at_all');

-- Without a row: named to the members of the network, counted without its name for the funder.
create table public.sharing_agreement (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "site_id" UUID NOT NULL,
    "with_members" public.sharing_level NOT NULL DEFAULT 'named',
    "with_funder" public.sharing_level NOT NULL DEFAULT 'anonymous',
    "mark" INTEGER NOT NULL DEFAULT 0,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "sharing_agreement_pkey" PRIMARY KEY ("network_id","id")
);
create unique index "sharing_agreement_network_id_site_id_key" on public.sharing_agreement("network_id", "site_id");
alter table public.sharing_agreement add constraint "sharing_agreement_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.sharing_agreement add constraint "sharing_agreement_network_id_site_id_fkey" foreign key ("network_id", "site_id") references public.site("network_id", "id") on delete restrict on update no action;

-- A site without a name is told from others by a number that is drawn, not made from anything of the site, and drawn anew
-- each time the site stops being named, so that nobody who knew it by name knows it by number.
create function app.draw_sharing_mark() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
begin
  if tg_op = 'UPDATE' and not (old.with_members = 'named' and new.with_members <> 'named') then
    new.mark := old.mark;
    return new;
  end if;
  loop
    new.mark := 1000 + floor(random() * 9000);
    exit when not exists (select 1 from public.sharing_agreement a where a.network_id = new.network_id and a.mark = new.mark);
  end loop;
  return new;
end $$;
alter function app.draw_sharing_mark() owner to pinset_definer;
revoke execute on function app.draw_sharing_mark() from public;
create trigger draw_mark before insert or update on public.sharing_agreement for each row execute function app.draw_sharing_mark();

grant select, insert, update on public.sharing_agreement to pinset_app;
grant select on public.sharing_agreement to pinset_definer;
create trigger keep_identity before update on public.sharing_agreement for each row execute function app.keep_identity();
create trigger write_history after insert or update on public.sharing_agreement for each row execute function app.write_history();

-- The coordinator reads what every site has said and changes none of it.
alter table public.sharing_agreement enable row level security;
alter table public.sharing_agreement force row level security;
create policy coordinator_read on public.sharing_agreement for select to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator');
create policy member_own_sites on public.sharing_agreement for all to pinset_app
  using (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]))
  with check (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]));

-- What the actor may know of sites: a name only where the site is named to them (or is theirs), a number only where it is
-- anonymous, neither where it shares nothing.
create function app.shown_sites(wanted uuid[])
  returns table (site_id uuid, shared public.sharing_level, site_name text, mark integer)
  language sql stable security definer set search_path = public, pg_temp as $$
  select s.id, l.shared, case when l.shared = 'named' then s.name end, case when l.shared = 'anonymous' then a.mark end
  from public.site s
  left join public.sharing_agreement a on a.network_id = s.network_id and a.site_id = s.id
  cross join lateral (select case
    when app.member_role() = 'coordinator' or s.id = any (app.site_ids()) then 'named'
    when app.member_role() = 'funder' then coalesce(a.with_funder, 'anonymous')
    else coalesce(a.with_members, 'named') end::public.sharing_level as shared) l
  where s.network_id = app.network_id() and s.id = any (wanted) and app.member_role() is not null
$$;
alter function app.shown_sites(uuid[]) owner to pinset_definer;
revoke execute on function app.shown_sites(uuid[]) from public;
grant execute on function app.shown_sites(uuid[]) to pinset_app, pinset_definer;

-- The other ends of the second lives of a batch that the actor may see: the code that is written on the units, and of the
-- site what it shares. A site that shares nothing keeps the code of its batch to itself as well.
drop function app.second_life_ends(uuid);
create function app.second_life_ends(of_batch uuid)
  returns table (batch_id uuid, code text, site_name text, shared public.sharing_level, mark integer)
  language sql stable security definer set search_path = public, pg_temp as $$
  select b.id, case when s.shared <> 'not_at_all' then b.code end, s.site_name, s.shared, s.mark
  from public.batch own
  join public.second_life_source l on l.network_id = own.network_id and l.voided_at is null
    and (l.batch_id = own.id or l.source_batch_id = own.id)
  join public.batch b on b.network_id = own.network_id and b.voided_at is null
    and b.id = case when l.batch_id = own.id then l.source_batch_id else l.batch_id end
  join lateral app.shown_sites(array[b.site_id]) s on true
  where own.network_id = app.network_id() and own.id = of_batch
    and (app.member_role() = 'coordinator' or own.site_id = any (app.site_ids()))
$$;
alter function app.second_life_ends(uuid) owner to pinset_definer;
revoke execute on function app.second_life_ends(uuid) from public;
grant execute on function app.second_life_ends(uuid) to pinset_app, pinset_definer;
