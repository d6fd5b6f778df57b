"""Files of meshes, as drawing programs write them: text STL, OBJ, 3MF."""

import io
import zipfile

from models import triples

CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02"
PRODUCTION = "http://schemas.microsoft.com/3dmanufacturing/production/2015/06"
RELATIONS = ('<?xml version="1.0" encoding="UTF-8"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">'
             '<Relationship Target="{}" Id="rel0" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>')
TYPES = ('<?xml version="1.0" encoding="UTF-8"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">'
         '<Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>')


def as_text_stl(mesh, form="{:.9g}", end="\n", name="vessel"):
    """A text STL file."""
    lines = [f"solid {name}"]
    for triple in triples(mesh):
        lines += [" facet normal 0 0 0", "  outer loop"]
        lines += ["   vertex " + " ".join(form.format(value) for value in mesh.corners[number]) for number in triple]
        lines += ["  endloop", " endfacet"]
    return end.join([*lines, f"endsolid {name}", ""]).encode()


def as_obj(mesh, more="", backward=False, end="\n", faces=None):
    """An OBJ file; more stands after each corner of a face, such as /1/1; backward counts corners from the newest."""
    lines = ["# a vessel", "o vessel", "vt 0 0", "vn 0 0 1", *(f"v {x:.9g} {y:.9g} {z:.9g}" for x, y, z in mesh.corners), "g all", "s off"]
    shift = -len(mesh.corners) if backward else 1
    lines += ["f " + " ".join(f"{number + shift}{more}" for number in face) for face in faces or triples(mesh)]
    return end.join([*lines, ""]).encode()


def mesh_xml(mesh):
    """A mesh as it stands in an object of a 3MF file."""
    vertices = "".join(f'<vertex x="{x:.9g}" y="{y:.9g}" z="{z:.9g}"/>' for x, y, z in mesh.corners)
    triangles = "".join(f'<triangle v1="{a}" v2="{b}" v3="{c}"/>' for a, b, c in triples(mesh))
    return f"<mesh><vertices>{vertices}</vertices><triangles>{triangles}</triangles></mesh>"


def object_xml(number, content, kind=""):
    """An object: a mesh, or components as (number, transform or path="…")."""
    inside = content if isinstance(content, str) else "<components>" + "".join(
        f'<component objectid="{of}" {_placing(how)}/>' for of, how in content) + "</components>"
    return f'<object id="{number}"{f" type={kind!r}" if kind else ""}>{inside}</object>'


def model_xml(objects, items, unit="millimeter", head=""):
    """A model part: objects as XML, items as (number, transform or path="…")."""
    placed = "".join(f'<item objectid="{of}" {_placing(how)}/>' for of, how in items)
    return (f'<?xml version="1.0" encoding="UTF-8"?>\n<model unit="{unit}" xml:lang="en-US" xmlns="{CORE}" xmlns:p="{PRODUCTION}" {head}>'
            f'<metadata name="Title">A vessel</metadata><resources>{"".join(objects)}</resources><build>{placed}</build></model>')


def _placing(how):
    return how if not how or how.startswith("p:") else f'transform="{how}"'


def packed(parts, method=zipfile.ZIP_DEFLATED, root="/3D/3dmodel.model"):
    """A 3MF file of parts by name."""
    file = io.BytesIO()
    with zipfile.ZipFile(file, "w", method) as archive:
        archive.writestr(zipfile.ZipInfo("[Content_Types].xml"), TYPES)
        if root:
            archive.writestr(zipfile.ZipInfo("_rels/.rels"), RELATIONS.format(root))
        for name, content in parts.items():
            archive.writestr(zipfile.ZipInfo(name), content, method)
    return file.getvalue()


def as_3mf(mesh, unit="millimeter", transform="", method=zipfile.ZIP_DEFLATED):
    """A 3MF file of one mesh."""
    return packed({"3D/3dmodel.model": model_xml([object_xml(1, mesh_xml(mesh))], [(1, transform)], unit)}, method)
