-- The three roles of Pinset, and who owns the database it runs in. Safe to run again.
--
-- On an outside server a superuser runs this once, connected to the empty database meant for Pinset:
--   psql -d pinset -f lib/database/roles.sql
-- and then gives the two roles that sign in a password each (\password pinset_owner, \password pinset_app).
--
-- pinset_owner    owns the tables; migrations and backups run as this role; row-level security binds it too.
-- pinset_app      answers requests; owns nothing and cannot bypass row-level security.
-- pinset_definer  never signs in; owns the few functions that must look past row-level security.

DO $$
BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'pinset_owner') THEN
    CREATE ROLE pinset_owner LOGIN NOSUPERUSER NOBYPASSRLS;
  END IF;
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'pinset_app') THEN
    CREATE ROLE pinset_app LOGIN NOSUPERUSER NOBYPASSRLS NOINHERIT;
  END IF;
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'pinset_definer') THEN
    CREATE ROLE pinset_definer NOLOGIN NOSUPERUSER BYPASSRLS;
  END IF;
END
$$;

-- The owner hands functions over to pinset_definer and replaces them in later migrations.
DO $$
BEGIN
  IF NOT EXISTS (
    SELECT FROM pg_auth_members
    WHERE roleid = 'pinset_definer'::regrole AND member = 'pinset_owner'::regrole AND inherit_option AND set_option
  ) THEN
    GRANT pinset_definer TO pinset_owner WITH INHERIT TRUE, SET TRUE;
  END IF;
END
$$;

ALTER SCHEMA public OWNER TO pinset_owner;
REVOKE ALL ON SCHEMA public FROM PUBLIC;
GRANT USAGE ON SCHEMA public TO pinset_app;
GRANT USAGE, CREATE ON SCHEMA public TO pinset_definer;

DO $$
BEGIN
  EXECUTE format('REVOKE ALL ON DATABASE %I FROM PUBLIC', current_database());
  EXECUTE format('GRANT CONNECT ON DATABASE %I TO pinset_app', current_database());
  EXECUTE format('ALTER DATABASE %I SET TimeZone = %L', current_database(), 'UTC');
  EXECUTE format('ALTER DATABASE %I OWNER TO pinset_owner', current_database());
END
$$;
