-- Whoever counts the units of a batch holds its row against others who count, not against a harvest of it: a reference to
-- the batch needs its key alone, which nobody changes.
create or replace function app.check_batch_counts() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
declare b public.batch%rowtype; contaminated int; lost int;
begin
  select * into b from public.batch where network_id = new.network_id and id = new.batch_id for no key update;
  if tg_table_name = 'finding' then
    if new.voided_at is null and new.found_on < b.inoculated_on then
      raise exception 'found before the batch was inoculated' using errcode = 'PB002';
    end if;
    select coalesce(sum(units), 0) into contaminated from public.finding
      where network_id = b.network_id and batch_id = b.id and voided_at is null;
    if contaminated > b.unit_count then
      raise exception 'more units contaminated (%) than inoculated (%)', contaminated, b.unit_count using errcode = 'PB003';
    end if;
  elsif tg_table_name = 'loss' then
    if new.voided_at is null and new.lost_on < b.inoculated_on then
      raise exception 'lost before the batch was inoculated' using errcode = 'PB002';
    end if;
    select coalesce(sum(units), 0) into lost from public.loss
      where network_id = b.network_id and batch_id = b.id and voided_at is null;
    if lost > b.unit_count then
      raise exception 'more units lost (%) than inoculated (%)', lost, b.unit_count using errcode = 'PB003';
    end if;
  end if;
  return null;
end $$;
alter function app.check_batch_counts() owner to pinset_definer;
