### What would you bet.

bet-differs = What differs between the two?
bet-differs-shaft = Same head, another shaft
bet-differs-head = Another head
bet-differs-old_club = A new club against an old one
bet-differs-unknown = Not said
bet-dots = Filled dots are the least, half-filled ones reach up to the most.
