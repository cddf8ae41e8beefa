-- The watch list: what was answered to a signal, which coordinators want the week's signals by e-mail, and which were sent.

create type public.signal_answer_kind as enum ('seen', 'explained', 'open');

-- A signal has no row of its own: it is worked out from the records, and its key is made from what it is about, so that the
-- same signal finds its answer whenever it is worked out again. 'open' takes an answer back.
create table public.signal_answer (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "signal_key" TEXT NOT NULL,
    "answer" public.signal_answer_kind NOT NULL,
    "words" TEXT,
    "answered_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "answered_by_id" UUID NOT NULL,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "signal_answer_pkey" PRIMARY KEY ("network_id","id")
);
alter table public.signal_answer add constraint "signal_answer_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
create unique index "signal_answer_network_id_signal_key_key" on public.signal_answer("network_id", "signal_key");
alter table public.signal_answer
  add constraint signal_answer_key check (length(signal_key) between 3 and 200),
  add constraint signal_answer_words check (answer <> 'explained' or length(trim(words)) > 0),
  add constraint signal_answer_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

grant select, insert, update on public.signal_answer to pinset_app, pinset_definer;
create trigger keep_identity before update on public.signal_answer for each row execute function app.keep_identity();
create trigger write_history after insert or update on public.signal_answer for each row execute function app.write_history();
alter table public.signal_answer enable row level security;
alter table public.signal_answer force row level security;
create policy coordinator_all on public.signal_answer for all to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
  with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator');

-- Each coordinator's own choice, off until it is made.
create table public.digest_choice (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "person_id" UUID NOT NULL,
    "wanted" BOOLEAN NOT NULL,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "digest_choice_pkey" PRIMARY KEY ("network_id","id")
);
alter table public.digest_choice add constraint "digest_choice_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.digest_choice add constraint "digest_choice_person_id_fkey" foreign key ("person_id") references public.person("id") on delete restrict on update no action;
create unique index "digest_choice_network_id_person_id_key" on public.digest_choice("network_id", "person_id");
alter table public.digest_choice
  add constraint digest_choice_void_reason check (voided_at is null or length(trim(void_reason)) > 0);

grant select, insert, update on public.digest_choice to pinset_app, pinset_definer;
create trigger keep_identity before update on public.digest_choice for each row execute function app.keep_identity();
create trigger write_history after insert or update on public.digest_choice for each row execute function app.write_history();
alter table public.digest_choice enable row level security;
alter table public.digest_choice force row level security;
create policy own_choice on public.digest_choice for all to pinset_app
  using (network_id = (select app.network_id()) and person_id = (select app.person_id())
    and (select app.member_role()) = 'coordinator')
  with check (network_id = (select app.network_id()) and person_id = (select app.person_id())
    and (select app.member_role()) = 'coordinator');

-- One line for each digest that went out; only ever inserted.
create table public.digest_sent (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "person_id" UUID NOT NULL,
    "week" DATE NOT NULL,
    "signals" INTEGER NOT NULL,
    "sent_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "digest_sent_pkey" PRIMARY KEY ("network_id","id")
);
alter table public.digest_sent add constraint "digest_sent_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.digest_sent add constraint "digest_sent_person_id_fkey" foreign key ("person_id") references public.person("id") on delete restrict on update no action;
create unique index "digest_sent_network_id_person_id_week_key" on public.digest_sent("network_id", "person_id", "week");

grant select, insert on public.digest_sent to pinset_app;
grant select on public.digest_sent to pinset_definer;
alter table public.digest_sent enable row level security;
alter table public.digest_sent force row level security;
create policy own_digests_read on public.digest_sent for select to pinset_app
  using (network_id = (select app.network_id()) and person_id = (select app.person_id()));
create policy own_digests_add on public.digest_sent for insert to pinset_app
  with check (network_id = (select app.network_id()) and person_id = (select app.person_id())
    and (select app.member_role()) = 'coordinator');

-- Whose digest of the week is still to be sent: a week begins on Monday at 6 in the network's zone. It answers ids only,
-- no name and no address; those are read as the person themselves.
create function app.digests_due(as_of timestamptz)
  returns table (network_id uuid, person_id uuid, week date)
  language sql stable security definer set search_path = public, pg_temp as $$
  select c.network_id, c.person_id, w.week
  from public.digest_choice c
  join public.network n on n.id = c.network_id
  join public.person p on p.id = c.person_id and p.disabled_at is null
  join public.membership m on m.network_id = c.network_id and m.person_id = c.person_id and m.role = 'coordinator'
    and m.ended_at is null and m.voided_at is null
  cross join lateral (select date_trunc('week', (as_of at time zone n.time_zone) - interval '6 hours')::date as week) w
  where c.wanted and c.voided_at is null
    and exists (select 1 from public.person_contact k where k.person_id = c.person_id)
    and not exists (select 1 from public.digest_sent s
      where s.network_id = c.network_id and s.person_id = c.person_id and s.week = w.week)
  order by c.network_id, c.person_id
$$;
alter function app.digests_due(timestamptz) owner to pinset_definer;
revoke execute on function app.digests_due(timestamptz) from public;
grant execute on function app.digests_due(timestamptz) to pinset_app, pinset_definer;
