-- How many batches each site has, from an index alone: the rows that hold it hold thirty sums besides, and the list of a
-- thousand sites read all of them.
create index "outcome_site_total_batches" on public.outcome_site_total("network_id", "site_id") include ("batches") where span = 'year';
