"""What readers show of a PDF, and ways to save it again or to change it.

`tests/outside` runs this with the libraries of three readers and two writers from PyPI:
pymupdf (MuPDF), pypdfium2 (PDFium), pikepdf (qpdf), pypdf; poppler is Debian's
`pdftoppm`. Nothing in here knows how `verify` works.

    readers.py resave IN FOLDER             the file saved again, in several ways
    readers.py mutate IN FOLDER COUNT SEED  changed copies of it
    readers.py same IN FILE...              whether every reader shows each as it shows IN
"""

import hashlib
import os
import random
import re
import subprocess
import sys
import tempfile
from xml.etree import ElementTree

import pikepdf
import pymupdf
import pypdf
import pypdfium2

DPI = 36


def resave(source, folder):
    def path(name):
        return os.path.join(folder, name + ".pdf")

    with pikepdf.open(source) as pdf:
        pdf.save(path("qpdf"), static_id=True)
        pdf.save(path("qpdf-packed"), object_stream_mode=pikepdf.ObjectStreamMode.generate)
        pdf.save(path("qpdf-plain"), compress_streams=False,
                 stream_decode_level=pikepdf.StreamDecodeLevel.generalized)
        pdf.save(path("qpdf-editable"), qdf=True)
    writer = pypdf.PdfWriter(clone_from=source)
    writer.write(path("pypdf"))
    document = pymupdf.open(source)
    document.save(path("mupdf"))
    document.save(path("mupdf-collected"), garbage=3, deflate=True)
    pdfium = pypdfium2.PdfDocument(source)
    pdfium.save(path("pdfium"))


def mutate(source, folder, count, seed):
    """Copies with one to three changes: of bytes, of numbers, of objects and their order."""
    draw = random.Random(seed)
    plain = os.path.join(folder, "plain.tmp")
    with pikepdf.open(source) as pdf:
        pdf.save(plain, static_id=True, compress_streams=False,
                 stream_decode_level=pikepdf.StreamDecodeLevel.generalized)
    with open(plain, "rb") as file:
        plain_bytes = file.read()
    os.remove(plain)
    for number in range(count):
        way = draw.choice([change_bytes, change_bytes, change_number, change_object])
        changed = way(draw, source, plain_bytes)
        with open(os.path.join(folder, f"mutant-{number:05}.pdf"), "wb") as file:
            file.write(changed)


def change_bytes(draw, _source, plain):
    changed = bytearray(plain)
    for _ in range(draw.randint(1, 3)):
        at = draw.randrange(len(changed))
        changed[at] = draw.randrange(256) if draw.random() < 0.5 else changed[at] ^ (1 << draw.randrange(8))
    return bytes(changed)


def change_number(draw, _source, plain):
    """A digit outside the tables, so that the file still holds together."""
    end = plain.rfind(b"\nxref")
    places = [match.start() for match in re.finditer(rb"[0-9]", plain[:end])]
    changed = bytearray(plain)
    for _ in range(draw.randint(1, 2)):
        changed[draw.choice(places)] = draw.choice(b"0123456789")
    return bytes(changed)


def change_object(draw, source, _plain):
    """A value of an object, a key more or less, two entries exchanged."""
    with pikepdf.open(source) as pdf:
        objects = [one for one in pdf.objects if isinstance(one, (pikepdf.Dictionary, pikepdf.Stream, pikepdf.Array))]
        one = draw.choice(objects)
        if isinstance(one, pikepdf.Array):
            if len(one) > 1:
                first, second = draw.sample(range(len(one)), 2)
                one[first], one[second] = one[second], one[first]
        else:
            keys = [key for key in one.keys() if key not in ("/Length", "/Filter")]
            if keys and draw.random() < 0.6:
                del one[draw.choice(keys)]
            else:
                key = draw.choice(["/AA", "/A", "/Title", "/Alt", "/Rotate", "/Contents", "/F", "/Hidden", "/OC"])
                one[key] = draw.choice([pikepdf.String("231 W"), 90, pikepdf.Dictionary(S=pikepdf.Name.URI, URI="x")])
        with tempfile.NamedTemporaryFile(suffix=".pdf") as file:
            pdf.save(file.name, static_id=True)
            return open(file.name, "rb").read()


def digest(*parts):
    return hashlib.sha256(repr(parts).encode()).hexdigest()


def by_mupdf(path):
    document = pymupdf.open(path)
    pages = [(page.get_text(), page.get_pixmap(dpi=DPI).samples) for page in document]
    links = [[sorted((key, str(value)) for key, value in link.items() if key not in ("xref", "id"))
              for link in page.get_links()] for page in document]
    names = sorted(document.embfile_names())
    files = [(name, document.embfile_get(name), document.embfile_info(name).get("desc")) for name in names]
    facts = {key: value for key, value in document.metadata.items() if key not in ("producer", "modDate", "format")}
    return digest(pages, links, document.get_toc(), files, sorted(facts.items()),
                  said(document.get_xml_metadata()))


def said(xml):
    """Metadata as its XML says it, but for who saved it and how it is laid out."""
    xml = re.sub(r"<\?.*?\?>", "", xml).strip("\ufeff \n")
    plain = ElementTree.canonicalize(xml, strip_text=True, rewrite_prefixes=True)
    return re.sub(r' \w+:xmptk="[^"]*"', "", plain)


def by_pdfium(path):
    document = pypdfium2.PdfDocument(path)
    pages = []
    for page in document:
        image = page.render(scale=DPI / 72).to_numpy()
        pages.append((image.tobytes(), page.get_textpage().get_text_bounded()))
    toc = [(item.level, item.get_title()) for item in document.get_toc()]
    files = [(one.get_name(), bytes(one.get_data())) for one in
             (document.get_attachment(n) for n in range(document.count_attachments()))]
    facts = {key: value for key, value in document.get_metadata_dict().items() if key not in ("Producer", "ModDate")}
    return digest(pages, toc, files, facts)


def by_poppler(path):
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run(["pdftoppm", "-r", str(DPI), path, os.path.join(folder, "p")], check=True,
                       stderr=subprocess.DEVNULL)
        pages = [open(os.path.join(folder, name), "rb").read() for name in sorted(os.listdir(folder))]
    return digest(pages)


def by_qpdf(path):
    with pikepdf.open(path) as pdf:
        pages = [page.contents_coalesce() or page.Contents.read_bytes() for page in pdf.pages]
        files = sorted((name, spec.get_file().read_bytes()) for name, spec in pdf.attachments.items())
    return digest(pages, files)


def by_pypdf(path):
    reader = pypdf.PdfReader(path, strict=False)
    files = sorted((name, [bytes(part) for part in parts]) for name, parts in reader.attachments.items())
    return digest(len(reader.pages), reader.pages[0].extract_text(), files, titles(reader, reader.outline))


def titles(reader, outline):
    return [titles(reader, one) if isinstance(one, list)
            else (one.title, reader.get_destination_page_number(one)) for one in outline]


READERS = [by_mupdf, by_pdfium, by_poppler, by_qpdf, by_pypdf]


def shown(reader, path):
    try:
        return reader(path)
    except Exception as error:  # a reader that gives up shows nothing
        return f"nothing ({type(error).__name__})"


def same(source, files):
    expected = {reader: shown(reader, source) for reader in READERS}
    differing = 0
    for path in files:
        for reader, of_source in expected.items():
            if shown(reader, path) != of_source:
                differing += 1
                print(f"{os.path.basename(path)}: {reader.__name__[3:]} shows something else")
    return 1 if differing else 0


def main():
    pymupdf.TOOLS.mupdf_display_errors(False)
    command, source, rest = sys.argv[1], sys.argv[2], sys.argv[3:]
    if command == "resave":
        resave(source, rest[0])
    elif command == "mutate":
        mutate(source, rest[0], int(rest[1]), int(rest[2]))
    else:
        sys.exit(same(source, rest))


main()
