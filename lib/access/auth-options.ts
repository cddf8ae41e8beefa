import 'server-only';
import type { NextAuthOptions } from 'next-auth';
import CredentialsProvider from 'next-auth/providers/credentials';
import { environment } from '@/lib/base/environment';
import { signIn } from './sign-in';
import { signInInput } from './sign-in.input';

export const sessionSeconds = 90 * 24 * 60 * 60;

/** The cookie holds a session id and nothing else; every right is read from the session's row at each request. */
export function authOptions(): NextAuthOptions {
  return {
    secret: environment().NEXTAUTH_SECRET,
    session: { strategy: 'jwt', maxAge: sessionSeconds },
    pages: { signIn: '/sign-in' },
    providers: [
      CredentialsProvider({
        credentials: { email: { type: 'email' }, password: { type: 'password' } },
        async authorize(credentials, request) {
          const input = signInInput.safeParse(credentials);
          if (!input.success) return null;
          const agent: unknown = request.headers?.['user-agent'];
          const result = await signIn(
            input.data.email,
            input.data.password,
            typeof agent === 'string' ? agent : undefined,
          );
          return result.kind === 'ok' ? { id: result.value.sessionId } : null;
        },
      }),
    ],
    callbacks: {
      jwt: ({ token, user }) => ({ sid: user ? user.id : token.sid }),
      session: ({ session, token }) => ({ expires: session.expires, sid: token.sid }),
    },
  };
}
