# Why a workbook cannot be read, and what to do about it.
too-large = This workbook is larger than can be read here.
too-large-remedy = Copy the rows of this session with their headings, and paste them here.
locked = This workbook is locked with a password.
locked-remedy = Open it, and save it without a password. Or copy the rows and paste them here.
old-format = This file is a workbook of an older kind.
old-format-remedy = Open it and save it as .xlsx, .ods or CSV. Or copy the rows and paste them here.
no-workbook = This file is packed, but it is no workbook.
no-workbook-remedy = Unpack it, and choose the file with the shots: text, CSV, .xlsx or .ods.
broken = This workbook is damaged and cannot be opened.
broken-remedy = Fetch it once more. Or open it, copy the rows with their headings, and paste them here.
