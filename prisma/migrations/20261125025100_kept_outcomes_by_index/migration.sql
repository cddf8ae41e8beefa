-- A session keeps the plans of these functions for as long as it lives, and the tables they write start out empty. A plan
-- made then would read them through for every batch once they have grown.
alter function app.keep_outcomes(uuid, uuid[]) set enable_seqscan = off;
alter function app.keep_outcomes(uuid, uuid[]) set enable_hashjoin = off;
alter function app.keep_outcomes(uuid, uuid[]) set enable_mergejoin = off;
alter function app.keep_outcomes(uuid, uuid[]) set jit = off;
alter function app.keep_outcomes(uuid, uuid[]) set plan_cache_mode = force_generic_plan;
