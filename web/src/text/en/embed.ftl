### What the frame on somebody else’s page says around the page itself.

embed-consent = What the site around this frame may see
embed-agree = Let { $host } see the answer. Your shots stay in this frame.
embed-shots = The shots of this page
embed-link = Straight Answer (opens beside this page)
