import type { Route } from 'next';
import { getLocale, getMessages, getTranslations } from 'next-intl/server';
import { currentActor, requirePerson } from '@/lib/access/current';
import { preferenceFields } from '@/lib/ui/access/preference-fields';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { keepWordsOf } from '@/lib/ui/offline/offline-words';
import { SignOutGuard } from '@/lib/ui/offline/sign-out-guard';
import { Link } from '@/lib/ui/page/link';
import { changePreferencesAction, signOutAction } from './actions';

export default async function AccountPage() {
  const person = await requirePerson();
  const actor = await currentActor();
  const t = await getTranslations('access.account');
  const watch = await getTranslations('watch.digest');
  const leaving = await getTranslations('leaving');
  const api = await getTranslations('api.tokens');
  const { name, language, region, massUnit, temperatureUnit, volumeUnit } = person;
  return (
    <>
      <RecordForm
        action={changePreferencesAction}
        heading={t('heading')}
        fields={await preferenceFields()}
        values={{ name, language, region, massUnit, temperatureUnit, volumeUnit }}
        submitLabel={t('save')}
        words={await loadFormWords()}
      />
      <p className="mt-6">
        <Link href="/account/password">{t('changePassword')}</Link>
      </p>
      {actor === undefined || actor.role === 'funder' ? null : (
        <p>
          <Link href={'/account/tokens' as Route}>{api('heading')}</Link>
        </p>
      )}
      {actor?.role === 'coordinator' ? (
        <p>
          <Link href={'/account/digest' as Route}>{watch('link')}</Link>
        </p>
      ) : null}
      <p>
        <Link href={'/account/leave' as Route}>{leaving('person.link')}</Link>
      </p>
      <p>
        <Link href="/networks">{t('otherNetwork')}</Link>
      </p>
      <h2>{t('sessions')}</h2>
      <p>{t('signedInAs', { name })}</p>
      <SignOutGuard
        personId={person.personId}
        networkId={actor?.networkId ?? ''}
        action={signOutAction}
        words={keepWordsOf(await getMessages(), await getLocale())}
      >
        <p className="chips">
          <button type="submit" name="reach" value="this-session" className="button button-plain">
            {t('signOut')}
          </button>
          <button type="submit" name="reach" value="all-sessions" className="button button-plain">
            {t('signOutAll')}
          </button>
        </p>
      </SignOutGuard>
    </>
  );
}
