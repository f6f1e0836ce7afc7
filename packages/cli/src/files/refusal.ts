import { UsageError } from 'beamkeep/columns';

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'no such file',
  ENOTDIR: 'no such file',
  EISDIR: 'this is a folder; name a file in it',
  EACCES: 'may not be read by this user',
  EPERM: 'may not be read by this user',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'links to itself',
};

/** What the system says about a file, in words a person can act on; what is not about files is passed on as it is. */
export function refusal(path: string, error: unknown): unknown {
  const code = error instanceof Error ? (error as NodeJS.ErrnoException).code : undefined;
  if (code === undefined || !/^E[A-Z]+$/.test(code)) return error;
  return new UsageError(`${path}: ${reasons[code] ?? `cannot be read (${code})`}`);
}
