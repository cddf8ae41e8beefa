import type { NextRequest } from 'next/server';
import NextAuth from 'next-auth';
import { authOptions } from '@/lib/access/auth-options';

type Context = { params: Promise<{ nextauth: string[] }> };

function handle(request: NextRequest, context: Context): Promise<Response> {
  return NextAuth(request, context, authOptions());
}

export { handle as GET, handle as POST };
