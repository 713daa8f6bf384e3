/**
 * A text locked with a passphrase by the browser's own means: AES-GCM under a key of PBKDF2.
 *
 * What it was locked with stands in the file, so that a later page opens it however later files are locked.
 */

export interface Locked {
  key: { derivation: "PBKDF2"; hash: "SHA-256"; iterations: number; salt: string };
  cipher: { name: "AES-GCM"; iv: string };
  data: string;
}

/** What guards of passwords recommend for this derivation: OWASP Password Storage Cheat Sheet (2023). */
const ITERATIONS = 600_000;
/** More would keep a phone busy for minutes: a file that asks for it was not made here. */
const MOST_ITERATIONS = 10_000_000;
const SALT_BYTES = 16;
const IV_BYTES = 12;

export async function locked(text: string, passphrase: string): Promise<Locked> {
  const salt = crypto.getRandomValues(new Uint8Array(SALT_BYTES));
  const iv = crypto.getRandomValues(new Uint8Array(IV_BYTES));
  const key = { derivation: "PBKDF2", hash: "SHA-256", iterations: ITERATIONS, salt: inLetters(salt) } as const;
  const data = await crypto.subtle.encrypt(
    { name: "AES-GCM", iv },
    await keyOf(passphrase, key, "encrypt"),
    new TextEncoder().encode(text),
  );
  return { key, cipher: { name: "AES-GCM", iv: inLetters(iv) }, data: inLetters(new Uint8Array(data)) };
}

/** The text again; null where the passphrase is not the one, or the file was changed. */
export async function unlocked({ key, cipher, data }: Locked, passphrase: string): Promise<string | null> {
  try {
    const opened = await crypto.subtle.decrypt(
      { name: "AES-GCM", iv: inBytes(cipher.iv) },
      await keyOf(passphrase, key, "decrypt"),
      inBytes(data),
    );
    return new TextDecoder().decode(opened);
  } catch {
    return null;
  }
}

export function isLocked(value: unknown): value is Locked {
  const { key, cipher, data } = (value ?? {}) as Partial<Locked>;
  return (
    key?.derivation === "PBKDF2" &&
    key.hash === "SHA-256" &&
    Number.isInteger(key.iterations) &&
    key.iterations > 0 &&
    key.iterations <= MOST_ITERATIONS &&
    typeof key.salt === "string" &&
    cipher?.name === "AES-GCM" &&
    typeof cipher.iv === "string" &&
    typeof data === "string"
  );
}

async function keyOf(passphrase: string, { hash, iterations, salt }: Locked["key"], use: KeyUsage): Promise<CryptoKey> {
  const said = new TextEncoder().encode(passphrase.normalize("NFC"));
  const from = await crypto.subtle.importKey("raw", said, "PBKDF2", false, ["deriveKey"]);
  const derived = { name: "PBKDF2", hash, iterations, salt: inBytes(salt) };
  return crypto.subtle.deriveKey(derived, from, { name: "AES-GCM", length: 256 }, false, [use]);
}

/** Piece by piece: a call takes only so many arguments. */
function inLetters(bytes: Uint8Array): string {
  let text = "";
  for (let at = 0; at < bytes.length; at += 0x8000) text += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
  return btoa(text);
}

const inBytes = (letters: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(letters), (letter) => letter.charCodeAt(0));
