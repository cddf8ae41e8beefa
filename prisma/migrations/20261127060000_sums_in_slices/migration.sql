-- Sums are compared with what they should be row by row, since a plan for many rows would read whole tables for a single
-- write. Of a table brought in for a hundred sites at once that was every sum against every other: a commit of 5,000
-- harvests did not end in ten minutes. A few blocks at a time it is each block's sums against its own.
alter function app.keep_sums(uuid, text, uuid[], date[]) rename to keep_slice_of_sums;

create function app.keep_sums(of_network uuid, of_span text, sites uuid[], starts date[]) returns void
  language plpgsql set search_path = public, pg_temp as $$
begin
  for at in 1 .. coalesce(cardinality(sites), 0) by 4 loop
    perform app.keep_slice_of_sums(of_network, of_span, sites[at : at + 3], starts[at : at + 3]);
  end loop;
end $$;
alter function app.keep_sums(uuid, text, uuid[], date[]) owner to pinset_definer;
revoke execute on function app.keep_sums(uuid, text, uuid[], date[]) from public;
