import 'server-only';
import { cookies } from 'next/headers';
import { encode } from 'next-auth/jwt';
import { environment } from '@/lib/base/environment';
import { sessionSeconds } from './auth-options';

function cookieName(): string {
  const secure = environment().NEXTAUTH_URL.startsWith('https:');
  return `${secure ? '__Secure-' : ''}next-auth.session-token`;
}

/** Sets the same cookie that next-auth's own endpoint would, so that signing in works in a form without script. */
export async function setSessionCookie(sessionId: string): Promise<void> {
  const { NEXTAUTH_SECRET, NEXTAUTH_URL } = environment();
  const token = await encode({ token: { sid: sessionId }, secret: NEXTAUTH_SECRET, maxAge: sessionSeconds });
  (await cookies()).set(cookieName(), token, {
    httpOnly: true,
    sameSite: 'lax',
    secure: NEXTAUTH_URL.startsWith('https:'),
    path: '/',
    maxAge: sessionSeconds,
  });
}

export async function dropSessionCookie(): Promise<void> {
  (await cookies()).delete(cookieName());
}
