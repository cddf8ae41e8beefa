-- The list of runs of all sites, latest first, a page at a time.
create index "treatment_run_network_id_started_at_id_idx" on public.treatment_run("network_id", "started_at", "id");
