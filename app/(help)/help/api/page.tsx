import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { currentSigned } from '@/lib/access/current';
import { apiGuide } from '@/lib/api/document/guide';
import { apiPath } from '@/lib/api/door/answer-request';
import { environment } from '@/lib/base/environment';
import { OperationGuide } from '@/lib/ui/api/operation-guide';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { PageShell } from '@/lib/ui/page/page-shell';

const parts = ['actor', 'units', 'keys', 'revisions', 'questions', 'problems', 'pages', 'limits'] as const;

/** How scripts and sensors read and write: by example first, then every operation. */
export default async function ApiHelpPage() {
  const signed = await currentSigned();
  const t = await getTranslations('api.guide');
  const common = await getTranslations('common');
  const base = `${environment().NEXTAUTH_URL.replace(/\/$/, '')}${apiPath}`;
  const read = `curl "${base}/batches?state=open&limit=10" \\
  -H "Authorization: Bearer $TOKEN"`;
  const write = `curl ${base}/conditions \\
  -H "Authorization: Bearer $TOKEN" \\
  -H "Content-Type: application/json" \\
  -H "Idempotency-Key: tent-2026-04-27T16:40" \\
  -d '{"placeId": "…", "readAt": "2026-04-27T16:40:00-04:00",
       "celsius": 17.5, "humidityPercent": 91}'`;
  const mend = `curl -X PUT ${base}/looks/… \\
  -H "Authorization: Bearer $TOKEN" \\
  -H "Content-Type: application/json" \\
  -H "Idempotency-Key: mend-1" -H 'If-Match: "1"' \\
  -d '{"lookedOn": "2026-04-26", "reason": "${t('example.reason')}"}'`;
  return (
    <PageShell name={signed?.actor?.networkName ?? common('product')}>
      <Heading text={t('heading')} />
      <p className="lead">{t('lead')}</p>
      <p>
        <Link href={'/account/tokens' as Route}>{t('toTokens')}</Link>
      </p>
      <p>
        <a href={`${apiPath}/openapi.json`}>{t('toDocument')}</a>
      </p>
      <h2>{t('example.heading')}</h2>
      <p>{t('example.read')}</p>
      <pre className="mb-4 whitespace-pre-wrap break-words">{read}</pre>
      <p>{t('example.write')}</p>
      <pre className="mb-4 whitespace-pre-wrap break-words">{write}</pre>
      <p>{t('example.mend')}</p>
      <pre className="mb-4 whitespace-pre-wrap break-words">{mend}</pre>
      <h2>{t('rules')}</h2>
      {parts.map((part) => (
        <section key={part} aria-labelledby={`rule-${part}`}>
          <h3 id={`rule-${part}`}>{t(`${part}.heading`)}</h3>
          <p>{t(`${part}.text`)}</p>
        </section>
      ))}
      <h2>{t('operations')}</h2>
      <OperationGuide sections={apiGuide()} />
    </PageShell>
  );
}
