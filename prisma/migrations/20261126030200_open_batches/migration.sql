-- What is open now, found without reading what is over: a network closes nearly all it ever started.
create index "batch_open_of_site" on public.batch("network_id", "site_id", "inoculated_on") where closed_on is null and voided_at is null;
create index "batch_open" on public.batch("network_id", "inoculated_on", "id") where closed_on is null and voided_at is null;
-- Open batches past the end of their window that nobody has looked at since.
create index "batch_outcome_unlooked" on public.batch_outcome("network_id", "site_id", "contamination_enters_on")
  where contamination_class = 'not-inspected' and closed_on is null;
create index "treatment_run_network_id_ended_at_idx" on public.treatment_run("network_id", "ended_at");

-- How many batches a site has: its totals without the voided ones, which are few.
create index "outcome_summary_voided" on public.outcome_summary("network_id", "site_id")
  where class = 'voided' and measure = 'contamination' and span = 'year';
create policy member_own_sites on public.outcome_site_total for select to pinset_app
  using (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]));
