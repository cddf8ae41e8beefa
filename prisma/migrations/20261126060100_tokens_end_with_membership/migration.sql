-- A token ends with the membership of the person who made it: whoever is taken back in later makes a new one.

create function app.end_tokens() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
begin
  update public.api_token t set voided_at = now(), void_reason = 'The person’s membership ended.'
    where t.network_id = new.network_id and t.person_id = new.person_id and t.voided_at is null;
  return null;
end $$;
alter function app.end_tokens() owner to pinset_definer;
revoke execute on function app.end_tokens() from public;

create trigger end_tokens after update of ended_at, voided_at, role on public.membership
  for each row when (new.ended_at is not null or new.voided_at is not null or new.role not in ('coordinator', 'member'))
  execute function app.end_tokens();
