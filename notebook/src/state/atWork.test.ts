import { describe, expect, it } from 'vitest';
import { atWork, shown, type Tell } from './atWork.js';

describe('work on the whole sheet', () => {
  it('is shown until it is done; a late word of its progress does not bring it back', async () => {
    let late: Tell = () => undefined;
    const answer = await shown('Packing', async (tell) => {
      tell(0.5);
      late = tell;
      expect(atWork.value).toMatchObject({ what: 'Packing', share: 0.5 });
      return 'done';
    });
    late(0.7);
    expect([answer, atWork.value]).toEqual(['done', null]);
  });

  it('begins nothing else meanwhile, and ends without a word when it is stopped', async () => {
    const stopped = shown('Opening', (_tell, signal) => {
      return new Promise((_, reject) => signal.addEventListener('abort', () => reject(new Error('given up'))));
    });
    await expect(shown('Packing', async () => 'never')).resolves.toBeUndefined();
    atWork.value?.stop();
    await expect(stopped).resolves.toBeUndefined();
    expect(atWork.value).toBeNull();
  });

  it('hands on what went wrong', async () => {
    await expect(shown('Opening', () => Promise.reject(new Error('it is damaged')))).rejects.toThrow('it is damaged');
    expect(atWork.value).toBeNull();
  });
});
