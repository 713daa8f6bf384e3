#!/usr/bin/env python3
"""Turns screens drawn by draw.mjs into synthetic photos as a phone takes them.

    python photos.py SCREENS OUT --seed N

For each screen: an emissive pixel grid (for moire), a pinhole camera with yaw,
pitch and roll, blur, glare, light level, color cast, sensor noise, JPEG, and at
times an EXIF orientation. One of three levels (easy, moderate, hard) is drawn
from the seed. Truth (cell text, value, corner points in the photo) is written
beside each photo as JSON.
"""
import argparse, io, json, math, pathlib
import cv2
import numpy as np
from PIL import Image

LEVELS = {
    #            perspective, roll,  megapixels,  blur (px at 4 MP),  motion, moire, glare, light, noise, jpeg
    "easy":     dict(tilt=(0, 4),   roll=(0, 1.5), mp=(3, 12), blur=(0.3, 0.8), motion=(0, 0), grid=0.15, glare=0.10, light=(0.85, 1.1), noise=(1, 3), q=(80, 90)),
    "moderate": dict(tilt=(2, 9),   roll=(0, 4),   mp=(2, 12), blur=(0.5, 1.3), motion=(0, 2), grid=0.5, glare=0.35, light=(0.6, 1.15), noise=(2, 6), q=(60, 88)),
    "hard":     dict(tilt=(6, 15),  roll=(1, 8),   mp=(1, 8),  blur=(0.8, 2.0), motion=(0, 5), grid=0.7, glare=0.6, light=(0.25, 0.8), noise=(4, 12), q=(40, 70)),
}


def camera(rng, box, level, w, h):
    """3x3 homography from screen pixels to photo pixels; the table fills most of the frame."""
    x0, y0, x1, y1 = box
    cx, cy, sw, sh = (x0 + x1) / 2, (y0 + y1) / 2, x1 - x0, y1 - y0
    size = max(sw, sh)
    ang = lambda lo_hi: math.radians(rng.uniform(*lo_hi)) * rng.choice([-1, 1])
    yaw, pitch, roll = ang(level["tilt"]), ang(level["tilt"]) * 0.7, ang(level["roll"])
    ry = np.array([[math.cos(yaw), 0, math.sin(yaw)], [0, 1, 0], [-math.sin(yaw), 0, math.cos(yaw)]])
    rx = np.array([[1, 0, 0], [0, math.cos(pitch), -math.sin(pitch)], [0, math.sin(pitch), math.cos(pitch)]])
    rz = np.array([[math.cos(roll), -math.sin(roll), 0], [math.sin(roll), math.cos(roll), 0], [0, 0, 1]])
    rot = rz @ rx @ ry
    dist = rng.uniform(1.3, 2.2)  # viewing distance in screen sizes
    # plane point ((x-cx)/size, (y-cy)/size, 0) -> rotate -> move away -> project
    plane = np.array([[1 / size, 0, -cx / size], [0, 1 / size, -cy / size], [0, 0, 1]])
    m = np.column_stack([rot[:, 0], rot[:, 1], np.array([0, 0, dist])]) @ plane
    pts = np.array([[x0, y0, 1], [x1, y0, 1], [x1, y1, 1], [x0, y1, 1]]).T
    p = m @ pts
    p = p[:2] / p[2]
    lo, hi = p.min(1), p.max(1)
    fill = rng.uniform(0.72, 0.97)
    k = fill * min(w / (hi[0] - lo[0]), h / (hi[1] - lo[1]))
    slack = np.array([w, h]) - k * (hi - lo)
    off = slack * rng.uniform(0.25, 0.75, 2)
    fit = np.array([[k, 0, off[0] - k * lo[0]], [0, k, off[1] - k * lo[1]], [0, 0, 1]])
    return fit @ m, dict(yaw=math.degrees(yaw), pitch=math.degrees(pitch), roll=math.degrees(roll))


def pixel_grid(img, strength, mult=3):
    """Screen seen close: each pixel becomes mult x mult samples with color stripes and dark gaps."""
    big = cv2.resize(img, None, fx=mult, fy=mult, interpolation=cv2.INTER_NEAREST).astype(np.float32)
    h, w = big.shape[:2]
    mask = np.ones((mult, mult, 3), np.float32) * (1 - strength)
    for c in range(3):
        mask[:, c % mult, 2 - c] = 1 + strength * (mult - 1)  # BGR image: red stripe first
    mask[-1] *= 1 - 0.6 * strength
    mask *= 1 / mask.mean((0, 1))
    big *= np.tile(mask, (h // mult, w // mult, 1))
    return big


def degrade(img, box, rng, name):
    lv = LEVELS[name]
    sw, sh = box[2] - box[0], box[3] - box[1]
    mp = rng.uniform(*lv["mp"]) * 1e6
    aspect = 4 / 3 if sw >= sh else 3 / 4
    w = int(round(math.sqrt(mp * aspect))); h = int(round(w / aspect))
    hom, angles = camera(rng, box, lv, w, h)
    info = dict(level=name, width=w, height=h, **angles)

    bezel = np.array([rng.uniform(8, 60)] * 3, np.float32)
    if rng.random() < lv["grid"]:
        mult, strength = 3, rng.uniform(0.25, 0.9)
        src = pixel_grid(img, strength, mult)
        info["moire"] = round(float(strength), 2)
        soft = max(0.0, rng.normal(0.5, 0.25))  # camera's own softness against the grid, in screen samples
        src = cv2.GaussianBlur(src, (0, 0), max(0.3, soft * mult))
    else:
        mult, src = 1, img.astype(np.float32)
    scale = np.array([[1 / mult, 0, 0], [0, 1 / mult, 0], [0, 0, 1]])
    # shrink first if the photo is coarser than the source (else sampling would be unfair)
    zoom = abs(np.linalg.det(hom[:2, :2])) ** 0.5
    hm = hom @ scale
    step = 1
    probe = hm @ np.array([[0, 1.0], [0, 0], [1, 1]])
    while info.get("moire") is None and zoom / step < 0.5 and step < 4:
        step *= 2
    photo = cv2.warpPerspective(src, hm, (w, h), flags=cv2.INTER_LINEAR if zoom / mult > 0.6 else cv2.INTER_AREA,
                                borderMode=cv2.BORDER_CONSTANT, borderValue=tuple(float(b) for b in bezel))
    photo = np.clip(photo, 0, 255) / 255.0

    ref = math.sqrt(w * h / 4e6)
    sigma = rng.uniform(*lv["blur"]) * ref
    photo = cv2.GaussianBlur(photo, (0, 0), max(0.25, sigma)); info["blur"] = round(sigma, 2)
    length = rng.uniform(*lv["motion"]) * ref
    if length >= 1:
        n = int(2 * round(length) + 1); k = np.zeros((n, n), np.float32); a = rng.uniform(0, math.pi)
        cv2.line(k, (int(n / 2 - length / 2 * math.cos(a)), int(n / 2 - length / 2 * math.sin(a))),
                 (int(n / 2 + length / 2 * math.cos(a)), int(n / 2 + length / 2 * math.sin(a))), 1.0)
        photo = cv2.filter2D(photo, -1, k / k.sum()); info["motion"] = round(length, 1)

    yy, xx = np.mgrid[0:h, 0:w].astype(np.float32)
    if rng.random() < lv["glare"]:
        peak = 0
        for _ in range(rng.integers(1, 3)):
            gx, gy = rng.uniform(0, w), rng.uniform(0, h)
            rx, ry = rng.uniform(0.08, 0.3) * w, rng.uniform(0.08, 0.3) * h
            amp = rng.uniform(0.12, 0.55); peak = max(peak, amp)
            g = amp * np.exp(-(((xx - gx) / rx) ** 2 + ((yy - gy) / ry) ** 2))
            photo = photo * (1 - 0.5 * g[..., None]) + g[..., None]
        info["glare"] = round(float(peak), 2)
    r2 = ((xx - w / 2) / w) ** 2 + ((yy - h / 2) / h) ** 2
    photo *= (1 - rng.uniform(0, 0.5) * r2)[..., None]
    light = rng.uniform(*lv["light"]); info["light"] = round(light, 2)
    photo *= light * (1 + rng.uniform(-0.08, 0.08, 3))[None, None]
    photo += rng.uniform(0, 0.04)  # veil
    noise = rng.uniform(*lv["noise"]) / 255; info["noise"] = round(noise * 255, 1)
    photo += rng.normal(0, 1, photo.shape).astype(np.float32) * noise * np.sqrt(0.3 + np.clip(photo, 0, 1))
    out = (np.clip(photo, 0, 1) * 255 + 0.5).astype(np.uint8)
    q = int(rng.integers(lv["q"][0], lv["q"][1] + 1)); info["quality"] = q
    return out, hom, info, q


def project(hom, box):
    x0, y0, x1, y1 = box
    p = hom @ np.array([[x0, y0, 1], [x1, y0, 1], [x1, y1, 1], [x0, y1, 1]]).T
    return [[round(float(a), 1), round(float(b), 1)] for a, b in (p[:2] / p[2]).T]


def main():
    ap = argparse.ArgumentParser()
    ap.add_argument("screens"); ap.add_argument("out"); ap.add_argument("--seed", type=int, default=20250)
    a = ap.parse_args()
    src, out = pathlib.Path(a.screens), pathlib.Path(a.out); out.mkdir(parents=True, exist_ok=True)
    cv2.setNumThreads(1)
    for n, f in enumerate(sorted(src.glob("s*.json"))):
        truth = json.loads(f.read_text())
        rng = np.random.default_rng([a.seed, n])
        level = ["easy", "moderate", "moderate", "hard"][n % 4]
        img = cv2.imread(str(f.with_suffix(".png")))
        photo, hom, info, q = degrade(img, truth["main"], rng, level)
        for c in truth["cells"] + truth["columns"]:
            if "box" in c: c["quad"] = project(hom, c.pop("box"))
        heights = [abs(c["quad"][3][1] - c["quad"][0][1]) for c in truth["cells"]]
        info["line_px"] = round(float(np.median(heights)), 1)
        truth["photo"] = info
        exif = None
        pic = Image.fromarray(photo[:, :, ::-1])
        if rng.random() < 0.12:  # stored sideways, with the EXIF tag that says so; truth is for the upright picture
            exif = Image.Exif(); exif[0x0112] = 6
            pic = pic.transpose(Image.Transpose.ROTATE_90); info["exif"] = 6
        kw = {"exif": exif} if exif else {}
        pic.save(out / (f.stem.replace("s", "p", 1) + ".jpg"), quality=q, subsampling=2, **kw)
        (out / (f.stem.replace("s", "p", 1) + ".json")).write_text(json.dumps(truth))
    print("photos in", out)


if __name__ == "__main__":
    main()
